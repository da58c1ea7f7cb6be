package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/**
 * Seasons planned again in their middle are whole: plan, page, list of changes, advice, day sheets, map and tables, audit. How many hours
 * lie between two replans is the system property {@code freshfurrow.replanHours}; 2 takes hours.
 */
class ReplannedSeasonsTest {
    private static final int HOURS = Integer.getInteger("freshfurrow.replanHours", 600);
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final String SHOWER = "0.05in";

    @TempDir
    private static Path plans = Path.of("");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aPlanterMayStandAtAFieldThatIsFinished() throws Exception {
        Path season = SCENARIOS.resolve("spring");
        Path plan = planned("spring");

        replanned(season, plan, LocalDateTime.parse("2027-04-23T12:00"));
    }

    @Test
    void theDocumentsThirdExampleMakesPlanAndPage() throws Exception {
        Path season = SCENARIOS.resolve("spring");
        Path plan = planned("spring");

        run("replan", season, "--plan", plan, "--now", "2027-05-06T06:00", "--spoiled", "windrow", "--steps", "0");

        assertThat(plan.resolve("plan.html")).isNotEmptyFile();
        run("audit", season, plan);
    }

    @ParameterizedTest
    @ValueSource(strings = {"spring", "weather-spring"})
    void aReplanIsWholeAtAnyHour(String scenario) throws Exception {
        Path season = SCENARIOS.resolve(scenario);
        Path plan = planned(scenario);

        LocalDateTime end = LocalDateTime.parse("2027-06-06T00:00");
        for (LocalDateTime now = LocalDateTime.parse("2027-04-19T02:00");
                now.isBefore(end);
                now = now.plusHours(HOURS)) {
            replanned(season, plan, now);
        }
    }

    /** A plan of the test's own, made once for all tests. */
    private Path planned(String scenario) throws Exception {
        Path once = plans.resolve(scenario);
        if (!Files.exists(once)) {
            run("plan", SCENARIOS.resolve(scenario), "--steps", "300", "--no-page", "--out", once);
        }
        Path own = Files.createDirectory(folder.resolve("plan"));
        Files.copy(once.resolve("plan.json"), own.resolve("plan.json"));
        return own;
    }

    private void replanned(Path season, Path plan, LocalDateTime now) throws Exception {
        Path out = Files.createTempDirectory(folder, "replanned");
        String printed = run(
                "replan",
                season,
                "--plan",
                plan,
                "--now",
                now,
                "--rain",
                now + "=" + SHOWER,
                "--steps",
                "0",
                "--out",
                out);

        assertThat(printed).contains("From now on", "Fills").contains("Written to");
        assertThat(out.resolve("plan.html")).content().contains("From now on");
        run("audit", season, out);
        run("page", out, "--season", season, "--out", out.resolve("again.html"));
        run("export", out, "--season", season, "--out", out.resolve("export"));
        run("sheets", out);
        Plan left = PlanFile.read(out.resolve("plan.json"));
        if (left.totals().areaHa() > 0) {
            run("day", out, left.totals().finish().toLocalDate());
        }
        Optional<String> last = left.planters().values().stream()
                .flatMap(planter -> planter.fields().stream())
                .reduce((before, after) -> after);
        if (last.isPresent()) {
            run("why", out, last.get(), "--season", season);
        }
    }

    private static String run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine command =
                Freshfurrow.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        List<String> words = new ArrayList<>();
        for (Object argument : arguments) {
            words.add(argument.toString());
        }

        int code = command.execute(words.toArray(String[]::new));

        assertThat(code).as("%s: %s", String.join(" ", words), err).isZero();
        return out.toString();
    }
}
