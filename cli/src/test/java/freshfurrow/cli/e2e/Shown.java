package freshfurrow.cli.e2e;

import freshfurrow.cli.documents.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A command line that a document shows, and what it says that it prints.
 *
 * @param line as people would type it
 * @param printed empty where the document does not show it; a line of three dots stands for any lines
 */
record Shown(String line, Optional<String> printed) {
    private static final String PROMPT = "$ ";

    /** Ours, and what a shell does for them; what else a document shows, as to build, is for others to try. */
    private static final Pattern RUN = Pattern.compile("((\\./)?freshfurrow|cp|ls|[a-z]+=\\S+$).*");

    /** All of a document, from top to bottom. */
    static List<Shown> in(Document document) {
        return document.blocks().stream().flatMap(Shown::in).toList();
    }

    private static Stream<Shown> in(Document.Block block) {
        return switch (block.kind()) {
            case "console" -> session(block.text()).stream();
            case "sh" ->
                block.text()
                        .replace("\\\n", " ")
                        .lines()
                        .map(line -> line.replaceFirst(" +# .*", ""))
                        .filter(line -> RUN.matcher(line).matches())
                        .map(line -> new Shown(line, Optional.empty()));
            default -> Stream.empty();
        };
    }

    private static List<Shown> session(String text) {
        List<Shown> shown = new ArrayList<>();
        for (String part : text.split("(?m)^(?=\\Q" + PROMPT + "\\E)", -1)) {
            if (part.startsWith(PROMPT)) {
                String[] lines = part.substring(PROMPT.length()).split("\n", 2);
                shown.add(new Shown(lines[0], Optional.of(lines[1])));
            } else if (!part.isEmpty()) {
                throw new IllegalArgumentException("no command before: " + part);
            }
        }
        return shown;
    }

    /** Whether it is what was printed. */
    boolean isLike(String all) {
        String pattern = printed.orElse("...\n")
                .lines()
                .map(line -> line.equals("...") ? "(?:.*\n)*?" : Pattern.quote(line) + "\n")
                .collect(Collectors.joining());
        return all.matches(pattern);
    }
}
