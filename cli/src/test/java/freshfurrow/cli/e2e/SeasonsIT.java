package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SeasonsIT {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void eachSeasonHasALineAndARefusedOneMakesTheExitCodeOne() throws Exception {
        SeasonOnDisk.in(Files.createDirectory(folder.resolve("adams")));
        SeasonOnDisk.brokenIn(Files.createDirectory(folder.resolve("burr")));
        SeasonOnDisk.in(Files.createDirectory(folder.resolve("crane")));
        InProcess.run("seasons", folder.toString(), "--steps", "20", "--slice", "1/3");

        Launcher.Result run = InProcess.run("seasons", folder.toString(), "--steps", "20");

        assertThat(run.exitCode()).isEqualTo(1);
        assertThat(run.out().lines())
                .satisfiesExactly(
                        adams -> assertThat(adams).isEqualTo(folder + "/adams/season.yaml: has a plan already"),
                        crane -> assertThat(crane)
                                .matches(".*/crane/season.yaml: Planted 204.0 ac, finished on .*; Unplanted 0.0 ac.*;"
                                        + " Late .* ac-days.*"),
                        sum -> assertThat(sum).isEqualTo("1 planned, 1 had a plan already, 1 refused"));
        assertThat(run.err().lines())
                .singleElement()
                .asString()
                .startsWith(folder + "/burr/season.yaml: refused: season.yaml:")
                .endsWith(" (and 1 more)");
        assertThat(folder.resolve("crane/plan/plan.html")).isRegularFile();
    }

    @Test
    void aPlanIsTheOneThatPlanMakes() throws Exception {
        SeasonOnDisk.in(folder);
        assertThat(InProcess.run("seasons", folder.toString(), "--steps", "50", "--seed", "3")
                        .exitCode())
                .isZero();
        String many = Files.readString(folder.resolve("plan/plan.json"));

        InProcess.run("plan", folder.toString(), "--steps", "50", "--seed", "3", "--force");

        assertThat(folder.resolve("plan/plan.json")).hasContent(many);
    }

    @Test
    void aSliceThatThereIsNotIsAMistake() {
        for (String slice : new String[] {"0/3", "4/3", "3", "1/0", "a/b"}) {
            Launcher.Result run = InProcess.run("seasons", folder.toString(), "--slice", slice);
            assertThat(run.exitCode()).isEqualTo(2);
            assertThat(run.err()).contains("'" + slice + "' is not a slice; write which of how many");
        }
    }
}
