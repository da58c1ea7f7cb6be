package freshfurrow.cli.e2e;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Runs command lines as somebody would who types them one after the other in a folder, but ours in this process, as that is quicker. */
final class ShownRun {
    private static final Pattern OURS = Pattern.compile("(?:\\./)?freshfurrow ([^$|<>]*)");
    private static final Pattern VARIABLE = Pattern.compile("([a-z]+)=(\\S+)");
    private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
    private static final List<String> OPTIONS_OF_FILES = List.of("--out", "--variant", "--plan", "--log");

    private final Path folder;
    private final Map<String, String> variables = new HashMap<>();

    ShownRun(Path folder) {
        this.folder = folder;
    }

    Launcher.Result run(String line) throws Exception {
        String expanded = expanded(line);
        var variable = VARIABLE.matcher(expanded);
        if (variable.matches()) {
            variables.put(variable.group(1), variable.group(2));
            return new Launcher.Result(0, "", "");
        }
        var ours = OURS.matcher(expanded);
        Launcher.Result result = ours.matches() ? here(ours.group(1)) : inAShell(expanded);
        return new Launcher.Result(result.exitCode(), as(result.out()), as(result.err()));
    }

    private Launcher.Result here(String words) {
        Consumer<String> listener = words.startsWith("desk ") ? new DeskClosed() : all -> {};
        return InProcess.run(listener, withPaths(words(words)));
    }

    private Launcher.Result inAShell(String line) throws Exception {
        String program = "freshfurrow() { '" + Launcher.path() + "' \"$@\"; }";
        return Launcher.runIn(
                folder, List.of("bash", "-c", program + "\n" + line.replace("./freshfurrow", "freshfurrow")));
    }

    private String expanded(String line) {
        String expanded = line;
        for (Map.Entry<String, String> variable : variables.entrySet()) {
            expanded = expanded.replace("$" + variable.getKey(), variable.getValue());
        }
        return expanded;
    }

    private static List<String> words(String line) {
        return WORD.matcher(line)
                .results()
                .map((MatchResult word) -> word.group(1) == null ? word.group(2) : word.group(1))
                .toList();
    }

    /** With files that are meant from the folder, as this process works in another one. */
    private String[] withPaths(List<String> words) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            boolean named = i > 0 && OPTIONS_OF_FILES.contains(words.get(i - 1));
            boolean season = i == 1 && !word.startsWith("-");
            all.add(
                    named || season || Files.exists(folder.resolve(word))
                            ? folder.resolve(word).toString()
                            : word);
        }
        return all.toArray(String[]::new);
    }

    /** As it would be printed in the folder. */
    private String as(String printed) {
        return printed.replace(folder + "/", "");
    }
}
