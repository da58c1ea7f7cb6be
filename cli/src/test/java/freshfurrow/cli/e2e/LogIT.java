package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logging, listing and tracing with the real command. */
final class LogIT {
    @TempDir
    private Path folder = Path.of("");

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
}
