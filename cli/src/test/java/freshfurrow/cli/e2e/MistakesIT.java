package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What users can get wrong ends in a plain line and the right exit code, never in a stack trace. */
final class MistakesIT {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "plann",
                "plan",
                "weather",
                "weather x --years 2019-2010",
                "weather x --springs many",
                "plan x y",
                "plan x --time 30",
                "plan x --time -3s",
                "plan x --steps -1",
                "plan x --steps many",
                "plan x --threads 0",
                "plan x --seed 1.5",
                "check x --colour",
                "replan x",
                "replan x --plan y --steps -1",
                "day x 20.April",
                "day x 2027-02-30",
                "page",
                "page x y",
                "sheets",
                "sheets x --day 20.April",
                "export",
                "export x --only all",
                "why",
                "why x",
                "audit x",
                "log",
                "log list",
                "log x planted",
                "log x sown N40 3ac",
                "log x batch R1",
                "log x void 3",
                "log x --now noon list",
                "trace x",
                "trace x --field N40 --lot windrow",
                "learn",
                "learn x --out",
                "mix",
                "mix x --start 7am",
                "calibrate x --jar-time 30"
            })
    void aCommandLineThatMakesNoSenseIsExitCodeTwo(String commandLine) throws Exception {
        Launcher.Result result = InProcess.run(words(commandLine));
        assertThat(result.exitCode()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("--help'.");
        assertNoTrace(result);
    }

    /** @param commandLine with @ for the folder in which the files are */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "check @missing",
                "plan @missing",
                "day @missing 2027-04-20",
                "day @broken.json 2027-04-20",
                "day @empty 2027-04-20",
                "page @missing",
                "page @broken.json",
                "page @empty",
                "sheets @missing",
                "sheets @broken.json",
                "sheets @empty",
                "export @missing",
                "export @broken.json",
                "why @missing N40",
                "why @broken.json N40",
                "audit @missing @missing",
                "audit @season @broken.json",
                "check @empty",
                "log @missing",
                "log @season --log @broken.json",
                "log @season planted N4 3ac --at 2027-04-20T10:00",
                "log @season planted N40 3ac",
                "log @season --log @empty/none/log.csv planted N40 3ac --at 2027-04-20T10:00",
                "trace @season --field N4",
                "trace @season --field N40 --plan @broken.json",
                "learn @missing",
                "learn @season --log @broken.json",
                "mix @missing",
                "calibrate @missing",
                "check @season --variant @missing.yaml",
                "check @broken.json"
            })
    void aFileThatCannotBeReadIsExitCodeOne(String commandLine) throws Exception {
        Files.writeString(folder.resolve("broken.json"), "{\"format\": ");
        Files.createDirectory(folder.resolve("empty"));
        SeasonOnDisk.in(Files.createDirectory(folder.resolve("season")));
        Launcher.Result result = InProcess.run(words(commandLine.replace("@", folder + "/")));
        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).isNotBlank();
        assertNoTrace(result);
    }

    @Test
    void everyProblemOfASeasonIsALineAndNothingIsWritten() throws Exception {
        SeasonOnDisk.brokenIn(folder);
        Launcher.Result result = InProcess.run("plan", folder.toString());
        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err().lines())
                .anyMatch(line -> line.contains("season.yaml") && line.contains("flow"))
                .anyMatch(line -> line.contains("season.yaml") && line.contains("corn"));
        assertNoTrace(result);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("season.yaml"));
        }
    }

    @Test
    void aPlanCannotBeWrittenBelowAFileAndThatIsSaidBeforePlanning() throws Exception {
        SeasonOnDisk.in(folder);
        Path file = Files.writeString(folder.resolve("file"), "mine");
        Launcher.Result result = InProcess.run(
                "plan",
                folder.toString(),
                "--time",
                "10min",
                "--out",
                file.resolve("out").toString());
        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.err()).contains("cannot be written", "nothing was planned", "--out");
        assertThat(file).hasContent("mine");
        assertNoTrace(result);
    }

    @Test
    void aFolderThatTheSystemKeepsIsRefusedBeforePlanning() throws Exception {
        assumeThat(Path.of("/proc/self")).exists();
        SeasonOnDisk.in(folder);
        Launcher.Result result = InProcess.run("plan", folder.toString(), "--time", "10min", "--out", "/proc/plan");
        assertThat(result.exitCode()).isEqualTo(1);
        assertThat(result.err()).startsWith("/proc/plan: cannot be written").contains("nothing was planned");
        assertNoTrace(result);
    }

    private static String[] words(String commandLine) {
        return commandLine.isEmpty() ? new String[0] : commandLine.split(" ", -1);
    }

    static void assertNoTrace(Launcher.Result result) {
        assertThat(result.all()).doesNotContain("\tat ", "Exception", "error in the program");
    }
}
