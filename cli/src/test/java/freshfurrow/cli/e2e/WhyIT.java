package freshfurrow.cli.e2e;

import static freshfurrow.cli.e2e.MistakesIT.assertNoTrace;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
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
        plan(Launcher.scenario("first-season"), "20000");

        Launcher.Result why = why("W95", "--season", Launcher.scenario("first-season"));

        assertThat(why.exitCode()).isZero();
        assertThat(why.err()).isEmpty();
        assertThat(why.out())
                .startsWith("W95 (")
                .contains("in time, ", "Why not sooner", "Before it in P1's planting order", "Other positions")
                .contains(
                        "All 7 other positions in the planting order were tried and none is better.",
                        "Moving this field alone would not help.",
                        ": worse")
                .doesNotContain("What would get it planted in time");
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
                .contains("Planters wait for compost until lot windrow is on hand on Mon 2027-05-03.")
                .contains("What would get it planted in time", "lot windrow 3 days sooner, on Fri 2027-04-30");
    }

    @Test
    void everyFieldOfALargerSeasonHasAnAnswer() throws Exception {
        plan(Launcher.scenario("spring"), "0");

        Launcher.Result why = why("F17", "--season", Launcher.scenario("spring"));

        assertThat(why.exitCode()).isZero();
        assertThat(why.err()).isEmpty();
        assertThat(why.out()).contains("All 40 other positions in the planting order were tried", "As planned: ");
    }

    @Test
    void aFieldThatIsLateForWetGroundIsNotSaidToLackCompost() throws Exception {
        // compost is never short; days on which the ground bears a planter are
        String late = lastLateField(planned(Launcher.scenario("weather-spring"), "3000"));

        Launcher.Result why = why(late, "--season", Launcher.scenario("weather-spring"));

        assertThat(why.exitCode()).isZero();
        assertThat(why.out()).contains("late by ", "Its ground is too wet from ", "What would get it planted in time");
        assertThat(enough(why)).doesNotContain("compost").doesNotContain("lot ");
    }

    @Test
    void afterAReplanNoCompostIsWishedForOnDaysThatAreGone() throws Exception {
        // the delivery of 3 May is there on 8 May
        String late = lastLateField(planned(Launcher.scenario("weather-spring"), "3000"));
        Launcher.Result replan = InProcess.run(
                "replan",
                Launcher.scenario("weather-spring"),
                "--plan",
                plan,
                "--out",
                plan,
                "--now",
                "2027-05-08T12:00",
                "--steps",
                "0",
                "--no-page");
        assertThat(replan.err()).isEmpty();

        Launcher.Result why = why(late, "--season", Launcher.scenario("weather-spring"));

        assertThat(why.exitCode()).isZero();
        assertThat(why.out())
                .contains("late by ", "What would get it planted in time")
                .doesNotContain(" sooner, on ");
        assertThat(enough(why)).doesNotContain("compost");
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

        Launcher.Result why = why("N40", "--season", Launcher.scenario("first-season"));

        assertRefused(why);
        assertThat(why.err()).contains("scenarios/first-season: this is not what", "make a new plan");
    }

    @Test
    void aSeasonThatChangedSinceIsRefused() throws Exception {
        plan(SeasonOnDisk.in(folder).toString(), "0");
        Path file = folder.resolve("season.yaml");
        Files.writeString(file, Files.readString(file).replace("area: 42 ac", "area: 43 ac"));

        Launcher.Result why = why("N40");

        assertRefused(why);
        assertThat(why.err()).contains("season.yaml: this is not what", "make a new plan");
    }

    @Test
    void aPlanWhoseListsWereChangedIsRefused() throws Exception {
        plan(SeasonOnDisk.in(folder).toString(), "0");
        Path file = folder.resolve("plan").resolve("plan.json");
        Files.writeString(file, Files.readString(file).replaceFirst("(\"fields\": \\[[^\\]]*), \"\\w+\"]", "$1]"));

        Launcher.Result why = why("N40");

        assertRefused(why);
        assertThat(why.err())
                .contains("plan.json: its planting orders give a different score than it says", "make a new plan");
    }

    private void plan(String season, String steps) throws Exception {
        assertThat(InProcess.run("plan", season, "--steps", steps, "--out", plan)
                        .exitCode())
                .isZero();
    }

    private String planned(String season, String steps) throws Exception {
        Launcher.Result planned = InProcess.run("plan", season, "--steps", steps, "--out", plan);
        assertThat(planned.exitCode()).isZero();
        return planned.out();
    }

    /** The last field that a plan's text tells to be late. */
    private static String lastLateField(String planned) {
        return Pattern.compile("(?m)^ +(F\\d+): .* ac after ")
                .matcher(planned)
                .results()
                .map(late -> late.group(1))
                .reduce((before, after) -> after)
                .orElseThrow();
    }

    /** What is said to be enough. */
    private static String enough(Launcher.Result why) {
        String advice = why.out().substring(why.out().indexOf("What would get it planted in time"));
        int inVain = advice.indexOf("Not enough on its own");
        return inVain < 0 ? advice : advice.substring(0, inVain);
    }

    private Launcher.Result why(String field, String... options) throws Exception {
        String[] words = new String[options.length + 3];
        words[0] = "why";
        words[1] = plan;
        words[2] = field;
        System.arraycopy(options, 0, words, 3, options.length);
        return InProcess.run(words);
    }

    private static void assertRefused(Launcher.Result why) {
        assertThat(why.exitCode()).isEqualTo(1);
        assertThat(why.out()).isEmpty();
        assertNoTrace(why);
    }
}
