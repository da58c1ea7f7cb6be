package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.model.timeline.WetGround;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.ProgressListener;
import freshfurrow.solver.SeasonPlanner;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rain on the twelfth day of the spring scenario. */
final class ReplanSpringIT {
    private static final Path SPRING = Launcher.projectFolder().resolve("scenarios/spring");
    private static final String STEPS = "60000";

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void plan() throws Exception {
        Launcher.Result plan =
                Launcher.run("plan", SPRING.toString(), "--steps", STEPS, "--no-page", "--out", folder.toString());
        assertThat(plan.exitCode()).isZero();
    }

    @Test
    void theNextDaysStayWhereRainLetsThemAndTheRestIsAsGoodAsPlannedFromScratch() throws Exception {
        for (String at : List.of("2027-04-30T10:00", "2027-04-30T20:00")) {
            Path out = folder.resolve(at.replace(':', '.'));
            Launcher.Result replan = Launcher.run(
                    "replan",
                    SPRING.toString(),
                    "--plan",
                    folder.toString(),
                    "--rain",
                    at + "=0.8in",
                    "--steps",
                    STEPS,
                    "--no-page",
                    "--out",
                    out.toString());
            assertThat(replan.err()).isEmpty();
            Plan plan = PlanFile.read(out.resolve("plan.json"));
            PlanStart start = plan.start().orElseThrow();
            Season whole = ((Reading.Valid) SeasonFiles.read(SPRING, List.of())).season();

            if (at.endsWith("10:00")) {
                // after the rain of the evening, the one field that is dry on its day is worth more to the other
                // planter
                assertSteady(start.remaining(whole), plan, start.standing().promised());
            }
            assertAsGood(plan, fromScratch(start.withPromises(Map.of()), whole, plan.season()));
        }
    }

    @Test
    void aTenthOfASecondOfSearchMakesAUsablePlan() throws Exception {
        Launcher.Result replan = Launcher.run(
                "replan",
                SPRING.toString(),
                "--plan",
                folder.toString(),
                "--rain",
                "2027-04-30T10:00=0.8in",
                "--time",
                "0.1s",
                "--no-page");

        assertThat(replan.exitCode()).isZero();
    }

    private static void assertSteady(Season left, Plan plan, Map<String, Standing.Promise> promised) {
        Map<String, Standing.Promise> planned = new LinkedHashMap<>();
        plan.planters().forEach((planter, its) -> its.activities().forEach(activity -> {
            if (activity instanceof Activity.Plant plant) {
                planned.putIfAbsent(
                        plant.field(),
                        new Standing.Promise(planter, plant.start().toLocalDate()));
            }
        }));
        int mayStay = 0;
        int stay = 0;
        for (Field field : left.fields()) {
            Standing.Promise promise = promised.get(field.id());
            if (promise != null && !isWet(left, field, promise)) {
                mayStay++;
                stay += promise.equals(planned.get(field.id())) ? 1 : 0;
            }
        }
        assertThat((double) stay).isGreaterThanOrEqualTo(0.9 * mayStay);
    }

    private static boolean isWet(Season left, Field field, Standing.Promise promise) {
        return WetGround.of(left, field.drainage()).stream()
                .anyMatch(wet -> wet.from().isBefore(promise.day().plusDays(1).atStartOfDay())
                        && wet.to().isAfter(promise.day().atStartOfDay()));
    }

    private static Plan fromScratch(PlanStart start, Season whole, Plan.SeasonSource source) {
        CompiledSeason left = CompiledSeason.of(start.remaining(whole));
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(Long.parseLong(STEPS)), 1);
        return PlanRecorder.record(
                left, new SeasonPlanner(left, options, ProgressListener.SILENT).plan(), source, start);
    }

    /** Within two per cent of late and unserved area, as the score weighs it. */
    private static void assertAsGood(Plan plan, Plan fromScratch) {
        assertThat((double) -plan.score().medium())
                .isLessThanOrEqualTo(-1.02 * fromScratch.score().medium());
    }
}
