package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code weather}, and a season planned under a record. */
final class WeatherIT {
    private static final String SCENARIO = Launcher.scenario("weather-spring");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void workableDaysAreToldByWeekAndDrainageOverTheYears() throws Exception {
        Launcher.Result result = InProcess.run("weather", SCENARIO);

        assertThat(result.err()).isEmpty();
        assertThat(result.exitCode()).isZero();
        assertThat(result.out())
                .contains(
                        "Record station.csv, 1997-01-01 to 2026-12-31 (invented for the demo by a generator)",
                        "30 springs: the years 1997 to 2026",
                        "Well drained fields",
                        "Moderately drained fields",
                        "Poorly drained fields",
                        "Without days off",
                        "Look at the ground");
        assertThat(result.out()
                        .lines()
                        .filter(line -> line.matches("Mon 2027-0.* in +[67] +\\d +\\d +\\d  [#+.-]{6,7}")))
                .hasSize(21);
    }

    @Test
    void moreSpringsAreGeneratedAndSaidToBe() throws Exception {
        Launcher.Result result = InProcess.run("weather", SCENARIO, "--springs", "1000", "--seed", "7");

        assertThat(result.out())
                .contains("1,000 springs: the years 1997 to 2026 and 970 generated from the record with seed 7");
        assertThat(InProcess.run("weather", SCENARIO, "--springs", "1000", "--seed", "7")
                        .out())
                .isEqualTo(result.out());
    }

    @Test
    void whatCannotBeCountedIsOneLine() throws Exception {
        assertThat(InProcess.run("weather", Launcher.scenario("spring")))
                .isEqualTo(new Launcher.Result(
                        1,
                        "",
                        "The season names no weather record; write weather: {file: station.csv} in season.yaml (docs/weather.md)"
                                + System.lineSeparator()));
        assertThat(InProcess.run("weather", SCENARIO, "--years", "1950").err())
                .startsWith("station.csv has the season's days of 1997 to 2026");
        assertThat(InProcess.run("weather", SCENARIO, "--springs", "0").exitCode())
                .isEqualTo(1);
        assertThat(InProcess.run("weather", SCENARIO, "--springs", "5", "--years", "2019")
                        .err())
                .startsWith("--years and --springs cannot be used together");
    }

    @Test
    void aPlanUnderARecordKeepsOffWetGroundAndItsPageSaysWhy() throws Exception {
        Path out = folder.resolve("plan");
        Launcher.Result plan =
                InProcess.run("plan", SCENARIO, "--steps", "200", "--seed", "1", "--out", out.toString());

        assertThat(plan.exitCode()).isZero();
        assertThat(InProcess.run("audit", SCENARIO, out.toString()).exitCode()).isZero();
        assertThat(out.resolve("plan.html"))
                .content()
                .contains("of water in the topsoil (limit for a planter ", "fields closed: rained off by");
    }
}
