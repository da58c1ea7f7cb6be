package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logging, listing and tracing with the real command. */
final class LogIT {
    private static final Pattern BLOCK = Pattern.compile("```(text|csv)\n(.*?)```\n", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theExampleOfTheDocumentIsReal() throws Exception {
        Path season = Files.createDirectory(folder.resolve("first-season"));
        for (String file : List.of("season.yaml", "fields.csv")) {
            Files.copy(
                    Launcher.projectFolder()
                            .resolve("scenarios")
                            .resolve("first-season")
                            .resolve(file),
                    season.resolve(file));
        }
        List<String> blocks = BLOCK.matcher(Files.readString(
                        Launcher.projectFolder().resolve("docs").resolve("season-log.md")))
                .results()
                .map(block -> block.group(2))
                .toList();
        StringBuilder printed = new StringBuilder();
        for (String line : blocks.get(0).lines().toList()) {
            if (line.startsWith("$ freshfurrow ")) {
                printed.append(line)
                        .append('\n')
                        .append(printed(Launcher.runIn(
                                folder, Launcher.path(), words(line.substring("$ freshfurrow ".length())))));
            }
        }
        assertThat(printed).hasToString(blocks.get(0));
        assertThat(Files.readString(season.resolve("log.csv")))
                .isEqualTo("\ufeff" + blocks.get(1).replace("\n", "\r\n"));
    }

    @Test
    void aWrongLineChangesNothing() throws Exception {
        SeasonOnDisk.in(folder);
        run("log", folder.toString(), "planted", "N40", "40ac", "--at", "2027-04-20T15:10");
        byte[] before = Files.readAllBytes(folder.resolve("log.csv"));

        Launcher.Result result = InProcess.run(
                "log",
                folder.toString(),
                "--now",
                "2027-04-20T16:00",
                "planted",
                "N40",
                "3",
                "ac",
                "--load",
                "L0009",
                "--at",
                "2027-04-20T16:01");

        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err().lines())
                .containsExactly(
                        "the new line: at: 2027-04-20T16:01 is in the future: it is 2027-04-20T16:00 now;"
                                + " check date and time; a log tells what has happened",
                        "the new line: amount: N40 has 2 ac left to plant of 42 ac, not 3 ac;"
                                + " check field and amount, or void a wrong entry first",
                        "the new line: load: there is no load L0009, neither in a plan nor of a batch in the log;"
                                + " write its batches first, or leave the cell empty");
        assertThat(Files.readAllBytes(folder.resolve("log.csv"))).isEqualTo(before);
    }

    @Test
    void aLoadMayBeThePlansAndTheTraceTellsWhatWasPlanned() throws Exception {
        SeasonOnDisk.in(folder);
        run("plan", folder.toString(), "--steps", "10", "--no-page");
        run("log", folder.toString(), "planted", "N40", "3ac", "--load", "L0001", "--at", "2027-04-29T19:00");

        assertThat(run("trace", folder.toString(), "--field", "N40").lines())
                .anyMatch(line -> line.startsWith("  planned, not logged: batch B0001 by R1, end "))
                .anyMatch(line -> line.startsWith("  planned, not logged: by P1"));
        assertThat(run("trace", folder.toString(), "--lot", "windrow").lines())
                .anyMatch(line ->
                        line.startsWith("planned, not logged: batch B0001 by R1") && line.endsWith(", for load L0001"));
    }

    @Test
    void aLogThatCannotBeWrittenIsSaidWithoutATrace() throws Exception {
        SeasonOnDisk.in(folder);
        Launcher.Result result = InProcess.run(
                "log", folder.toString(), "--log", "/proc/log.csv", "note", "windy", "--at", "2027-04-20T15:10");
        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.err()).contains("/proc/log.csv: cannot be written", "nothing was added");
        MistakesIT.assertNoTrace(result);
    }

    private static String run(String... words) {
        return printed(InProcess.run(words));
    }

    private static String printed(Launcher.Result result) {
        assertThat(result.err()).isEmpty();
        assertThat(result.exitCode()).isZero();
        return result.out();
    }

    private static String[] words(String line) {
        List<String> words = new ArrayList<>();
        for (MatchResult word : WORD.matcher(line).results().toList()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        return words.toArray(String[]::new);
    }
}
