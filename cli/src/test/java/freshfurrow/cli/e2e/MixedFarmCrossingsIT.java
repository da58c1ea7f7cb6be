package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fields that are sprayed and fields that go without extract, where other things of a season meet them. */
final class MixedFarmCrossingsIT {
    /** Batches at the water point, three lots with dates, a reserve of its own for each recipe, overtime, and a planter that does not wait. */
    private static final String CROSSED = """
            rigs: {R1: {extractAt: water}}
            planters: {P1: {overtime: 30 min, longestWait: 15 min}}
            recipes: {furrow: {reserve: 20 min}, foliar: {reserve: 10 min}}
            compost:
              barn: {mass: 150 lb}
              second: {mass: 90 lb, from: 2027-05-06, at: yard}
            """;

    @TempDir
    private Path folder = Path.of("");

    private String season = "";
    private String plan = "";

    @BeforeEach
    void copyTheFarm() throws Exception {
        for (String name : List.of("season.yaml", "fields.csv")) {
            Files.copy(Path.of(Launcher.scenario("mixed-farm"), name), folder.resolve(name));
        }
        season = folder.toString();
        plan = folder.resolve("plan").toString();
    }

    @Test
    void aPlanOfAllOfItAndAReplanKeepToTheRules() throws Exception {
        String variant = file("crossed.yaml", CROSSED);

        assertThat(run(
                        "plan",
                        season,
                        "--variant",
                        variant,
                        "--steps",
                        "500",
                        "--seed",
                        "1",
                        "--no-page",
                        "--out",
                        plan))
                .contains("Without extract", "planter or sprayer fills");
        assertThat(run("audit", season, plan, "--variant", variant))
                .contains("No problems found.", "1 planter, 1 sprayer and 1 rig");

        String later = folder.resolve("later").toString();
        run(
                "replan",
                season,
                "--variant",
                variant,
                "--plan",
                plan,
                "--out",
                later,
                "--now",
                "2027-05-07T11:00",
                "--down",
                "R1=2027-05-07T11:00/2027-05-07T17:00",
                "--steps",
                "200",
                "--no-page");
        assertThat(run("audit", season, later, "--variant", variant)).contains("No problems found.");
    }

    @Test
    void anEntryOfPlantingWithoutExtractThatIsVoidedCountsNoMore() throws Exception {
        run("plan", season, "--steps", "300", "--seed", "1", "--no-page", "--out", plan);
        run("log", season, "planted", "C2", "29ac", "--without-extract", "--at", "2027-05-03T18:00");
        assertThat(replanned("with")).contains("29.0 ac logged");
        assertThat(InProcess.run("why", folder.resolve("with").toString(), "C2", "--season", season)
                        .exitCode())
                .isEqualTo(1);

        run("log", season, "void", "1", "--because", "that was B2", "--at", "2027-05-03T18:10");

        assertThat(replanned("without")).contains("0.0 ac logged");
        assertThat(run("why", folder.resolve("without").toString(), "C2", "--season", season))
                .startsWith("C2 (Creek corn): 29.0 ac");
        assertThat(run("audit", season, folder.resolve("without").toString())).contains("No problems found.");
    }

    @Test
    void comparedInSlicesWithNewPlansItIsTheSameAsInOneGo() throws Exception {
        Files.copy(Path.of(Launcher.scenario("weather-spring"), "station.csv"), folder.resolve("station.csv"));
        Path seasonFile = folder.resolve("season.yaml");
        Files.writeString(seasonFile, "weather: {file: station.csv, year: 2019}\n", StandardOpenOption.APPEND);

        String whole = compared("1-2", "whole");
        compared("1-1", "one");
        compared("2-2", "two");
        run(
                "compare",
                "--merge",
                folder.resolve("one").toString(),
                folder.resolve("two").toString(),
                "--out",
                folder.resolve("joined").toString());

        assertThat(whole)
                .contains("planted with extract (% of planted area)", "planter or sprayer fills")
                .contains("waiting of planters and sprayers (h)", "unplanted or unsprayed ac");
        assertThat(folder.resolve("joined").resolve("compare.json"))
                .hasSameTextualContentAs(folder.resolve("whole").resolve("compare.json"));
    }

    private String compared(String springs, String name) throws Exception {
        return run(
                "compare",
                season,
                "--springs",
                springs,
                "--steps",
                "40",
                "--replan",
                "14",
                "--out",
                folder.resolve(name).toString());
    }

    private String replanned(String name) throws Exception {
        return run(
                "replan",
                season,
                "--plan",
                plan,
                "--out",
                folder.resolve(name).toString(),
                "--now",
                "2027-05-04T06:00",
                "--only-logged",
                "--steps",
                "100",
                "--no-page");
    }

    private String file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static String run(String... words) throws Exception {
        Launcher.Result result = InProcess.run(Stream.of(words).toArray(String[]::new));
        assertThat(result.err()).isEmpty();
        assertThat(result.exitCode()).isZero();
        return result.out();
    }
}
