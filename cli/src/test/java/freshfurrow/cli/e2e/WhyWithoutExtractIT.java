package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Why a field is planted without extract, from season file to answer. */
final class WhyWithoutExtractIT {
    @TempDir
    private Path folder = Path.of("");

    private Path plan = Path.of("");

    @BeforeEach
    void nameThePlan() {
        plan = folder.resolve("plan");
    }

    @Test
    void aDecisionIsToldWithWhatItWouldTakeToChangeIt() throws Exception {
        String season = Launcher.scenario("mixed-farm");
        String variant = variant("{compost: {barn: {mass: 150 lb}}}");
        run(
                "plan",
                season,
                "--variant",
                variant,
                "--steps",
                "1000",
                "--seed",
                "1",
                "--no-page",
                "--out",
                plan.toString());

        String why = why(decided(), "--season", season, "--variant", variant);

        assertThat(why)
                .contains("Without extract: all of it", "Why without extract", ": by decision of the plan")
                .contains(
                        "What would get it planted with extract", "With extract at its own position, and nothing more")
                .contains(
                        " lb more compost in lot barn; it is then planted by ",
                        "the season has 70.5 ac without extract instead of 111.5 ac")
                .contains("all planters, sprayers and rigs working ")
                .contains("late, unplanted, unsprayed or without extract");
    }

    @Test
    void aFieldThatIsSprayedIsNeverSaidToGoWithout() throws Exception {
        String season = Launcher.scenario("mixed-farm");
        run("plan", season, "--steps", "500", "--seed", "1", "--no-page", "--out", plan.toString());

        assertThat(why("M1", "--season", season))
                .contains("Sprayed by boom", " in the spraying order were tried")
                .doesNotContain("Without extract", "Why without extract", "planted with extract");
    }

    @Test
    void whereNothingGoesWithoutNothingIsSaidOfIt() throws Exception {
        String season = Launcher.scenario("first-season");
        run("plan", season, "--steps", "200", "--no-page", "--out", plan.toString());

        assertThat(why("W95", "--season", season))
                .contains("late or unplanted; effort")
                .doesNotContain("without extract");
    }

    @Test
    void inMetricUnitsSoIsTheAnswer() throws Exception {
        String season = Launcher.scenario("metric");
        String variant = variant("{goals: {untreated: 3 d}, planters: {P1: {longestWait: 20 min}},"
                + " compost: {heap: {mass: 400 kg}}}");
        run(
                "plan",
                season,
                "--variant",
                variant,
                "--steps",
                "300",
                "--seed",
                "1",
                "--no-page",
                "--out",
                plan.toString());

        assertThat(why(decided(), "--season", season, "--variant", variant))
                .contains(" ha, ", "What would get it planted with extract")
                .containsPattern("\\d kg more compost in lot ");
    }

    @Test
    void inAVariantUnderWeatherAndAfterAReplanEachPartHasItsReason() throws Exception {
        String season = Launcher.scenario("weather-spring");
        String variant = variant("{goals: {untreated: 3 d}, compost: {delivery: null, windrow: {mass: 1500 lb}},"
                + " planters: {P1: {longestWait: 20 min}}}");
        run(
                "plan",
                season,
                "--variant",
                variant,
                "--steps",
                "300",
                "--seed",
                "1",
                "--no-page",
                "--out",
                plan.toString());
        assertThat(why(decided(), "--season", season, "--variant", variant)).contains(": by decision of the plan");

        run(
                "replan",
                season,
                "--variant",
                variant,
                "--plan",
                plan.toString(),
                "--out",
                plan.toString(),
                "--now",
                "2027-05-04T12:00",
                "--steps",
                "0",
                "--no-page");
        String why = why(wentOn(), "--season", season, "--variant", variant);

        assertThat(why)
                .contains(
                        "no compost is left, and no lot is to come.",
                        " of compost delivered to lot windrow, which is used up; it is then planted by ");
    }

    private String variant(String text) throws Exception {
        Path file = folder.resolve("variant.yaml");
        Files.writeString(file, text);
        return file.toString();
    }

    private void run(String... words) throws Exception {
        Launcher.Result result = InProcess.run(words);
        assertThat(result.err()).isEmpty();
        assertThat(result.exitCode()).isZero();
    }

    private String why(String field, String... options) throws Exception {
        List<String> words = new ArrayList<>(List.of("why", plan.toString(), field));
        words.addAll(Arrays.asList(options));
        Launcher.Result why = InProcess.run(words.toArray(String[]::new));
        assertThat(why.err()).isEmpty();
        assertThat(why.exitCode()).isZero();
        return why.out();
    }

    /** A field that the plan plants without extract by decision. */
    private String decided() throws Exception {
        return fields(true).first();
    }

    /** One on which planting goes on without it. */
    private String wentOn() throws Exception {
        SortedSet<String> all = fields(false);
        all.removeAll(fields(true));
        return all.first();
    }

    private SortedSet<String> fields(boolean byDecision) throws Exception {
        JsonNode planters =
                new ObjectMapper().readTree(plan.resolve("plan.json").toFile()).path("planters");
        SortedSet<String> found = new TreeSet<>();
        planters.forEach(planter -> {
            if (byDecision) {
                planter.path("withoutExtract").forEach(field -> found.add(field.asText()));
            } else {
                planter.path("activities").forEach(activity -> {
                    if (activity.has("areaHa") && !activity.has("load")) {
                        found.add(activity.path("field").asText());
                    }
                });
            }
        });
        return found;
    }
}
