package freshfurrow.cli.e2e;

import static freshfurrow.cli.e2e.MistakesIT.assertNoTrace;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Why a field is planted when it is, from season file to answer. */
final class WhyIT {
    @TempDir
    private Path folder = Path.of("");

    private String plan = "";

    @BeforeEach
    void nameThePlan() {
        plan = folder.resolve("plan").toString();
    }

    @Test
    void aFieldInTimeIsExplainedAndItsPositionIsALocalBest() throws Exception {
        // the plan of the README: proved best, so that no other position can be better
        plan("scenarios/first-season", "20000");

        Launcher.Result why = why("W95", "--season", "scenarios/first-season");

        assertThat(why.exitCode()).isZero();
        assertThat(why.err()).isEmpty();
        assertThat(why.out())
                .startsWith("W95 (")
                .contains("in time, ", "Why not sooner", "Before it in P1's list", "At other positions")
                .contains(
                        "7 other positions were played out, all that its planters' lists have: none is better",
                        "local best for this field",
                        ": worse")
                .doesNotContain("What would have it in time");
    }

    @Test
    void aFieldThatIsLateIsToldWhatWouldHaveItInTime() throws Exception {
        // 4,000 lb two days after the only window: all fields are late for compost. E20 is the last of four, planted on
        // the second
        // day on which there is compost. 2027-05-02 is a Sunday and closed, so those days have to be the Friday and the
        // Saturday.
        SeasonOnDisk.in(folder);
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("from: 2027-04-01", "from: 2027-05-03"));
        plan(folder.toString(), "200");

        Launcher.Result why = why("E20");

        assertThat(why.exitCode()).isZero();
        assertThat(why.out())
                .contains("E20 (East): 21.0 ac of corn, window Tue 2027-04-20 to Sat 2027-05-01", "late by ")
                .contains("Planters wait for compost until lot windrow is there on Mon 2027-05-03.")
                .contains("What would have it in time", "lot windrow 3 days sooner, on Fri 2027-04-30");
    }

    @Test
    void everyFieldOfALargerSeasonHasAnAnswer() throws Exception {
        plan("scenarios/spring", "0");

        Launcher.Result why = why("F17", "--season", "scenarios/spring");

        assertThat(why.exitCode()).isZero();
        assertThat(why.err()).isEmpty();
        assertThat(why.out()).contains("40 other positions were played out", "As planned: ");
    }

    @Test
    void aFieldThatIsNotThereIsRefusedWithTheNearestOne() throws Exception {
        plan(SeasonOnDisk.in(folder).toString(), "0");

        Launcher.Result why = why("N41");

        assertRefused(why);
        assertThat(why.err()).contains("The season has no field N41; did you mean N40?");
    }

    @Test
    void thePlanOfAnotherSeasonIsRefused() throws Exception {
        plan(SeasonOnDisk.in(folder).toString(), "0");

        Launcher.Result why = why("N40", "--season", "scenarios/first-season");

        assertRefused(why);
        assertThat(why.err()).contains("scenarios/first-season: this is not what", "plan again");
    }

    @Test
    void aSeasonThatChangedSinceIsRefused() throws Exception {
        plan(SeasonOnDisk.in(folder).toString(), "0");
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("area: 42 ac", "area: 43 ac"));

        Launcher.Result why = why("N40");

        assertRefused(why);
        assertThat(why.err()).contains("season.yaml: this is not what", "plan again");
    }

    @Test
    void aPlanWhoseListsWereChangedIsRefused() throws Exception {
        plan(SeasonOnDisk.in(folder).toString(), "0");
        Path file = folder.resolve("plan").resolve("plan.json");
        Files.writeString(file, Files.readString(file).replaceFirst("(\"fields\": \\[[^\\]]*), \"\\w+\"]", "$1]"));

        Launcher.Result why = why("N40");

        assertRefused(why);
        assertThat(why.err()).contains("plan.json: its lists played out have another score than it says", "plan again");
    }

    private void plan(String season, String steps) throws Exception {
        assertThat(Launcher.run("plan", season, "--steps", steps, "--out", plan).exitCode())
                .isZero();
    }

    private Launcher.Result why(String field, String... options) throws Exception {
        String[] words = new String[options.length + 3];
        words[0] = "why";
        words[1] = plan;
        words[2] = field;
        System.arraycopy(options, 0, words, 3, options.length);
        return Launcher.run(words);
    }

    private static void assertRefused(Launcher.Result why) {
        assertThat(why.exitCode()).isEqualTo(1);
        assertThat(why.out()).isEmpty();
        assertNoTrace(why);
    }
}
