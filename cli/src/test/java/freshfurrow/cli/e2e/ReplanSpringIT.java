package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.DateWindow;
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
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rain on the twelfth day of the spring scenario. What takes longest of all is shared by the cores. */
@Execution(ExecutionMode.CONCURRENT)
final class ReplanSpringIT {
    private static final Path SPRING = Launcher.projectFolder().resolve("scenarios/spring");
    private static final String STEPS = "180000";

    @TempDir
    private static Path planned = Path.of("");

    @TempDir
    private Path folder = Path.of("");

    @BeforeAll
    static void plan() throws Exception {
        Launcher.Result plan =
                // of this plan's fields of the next two days some are dry whatever the hour of the rain
                InProcess.run(
                        "plan",
                        SPRING.toString(),
                        "--steps",
                        "20000",
                        "--seed",
                        "8",
                        "--no-page",
                        "--out",
                        planned.toString());
        assertThat(plan.exitCode()).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {8, 10, 12, 14, 16, 18, 20})
    void theNextDaysStayWhereRainLetsThemAndNoMoreIsLateThanPlannedFromScratch(int hour) throws Exception {
        Launcher.Result replan = InProcess.run(replan(hour, "--steps", STEPS));
        assertThat(replan.err()).isEmpty();
        Plan plan = PlanFile.read(folder.resolve("plan.json"));
        PlanStart start = plan.start().orElseThrow();
        Season whole = ((Reading.Valid) SeasonFiles.read(SPRING, List.of())).season();
        Season left = start.remaining(whole);
        Season nothingPromised = start.withPromises(Map.of()).remaining(whole);
        Plan fromScratch = played(nothingPromised, listsOf(nothingPromised), plan.season(), start);

        assertThat(late(plan)).isLessThanOrEqualTo(1.02 * late(fromScratch));
        if (late(plan) >= late(fromScratch)) {
            // less lateness may be bought with any effort, as the score has it
            assertThat(effort(left, plan)).isLessThanOrEqualTo(1.02 * effort(nothingPromised, fromScratch));
        }
        Map<String, Standing.Promise> dry = dryPromises(left, start.standing().promised());
        assertThat(dry).isNotEmpty();
        if (kept(plan, dry) < 0.9 * dry.size()) {
            // rain forbids a dry field too, when its planter has to take the place of one that stands before wet ground
            Plan pinned = played(nothingPromised, listsOf(pinned(nothingPromised, dry)), plan.season(), start);
            if (kept(pinned, dry) > kept(plan, dry)) {
                assertThat(late(pinned)).isGreaterThan(1.02 * late(fromScratch));
            }
        }
    }

    @Test
    void aTenthOfASecondOfSearchMakesAUsablePlan() throws Exception {
        Launcher.Result replan = Launcher.run(replan(10, "--time", "0.1s"));

        assertThat(replan.exitCode()).isZero();
    }

    /** The command line after rain at that hour, until that limit of the search. */
    private String[] replan(int hour, String limit, String amount) {
        return new String[] {
            "replan",
            SPRING.toString(),
            "--plan",
            planned.toString(),
            "--rain",
            "2027-04-30T%02d:00=0.4in".formatted(hour),
            limit,
            amount,
            "--no-page",
            "--out",
            folder.toString()
        };
    }

    private static long kept(Plan plan, Map<String, Standing.Promise> promised) {
        return Promises.kept(plan.start().orElseThrow().standing().withPromised(promised), plan);
    }

    private static Map<String, Standing.Promise> dryPromises(Season left, Map<String, Standing.Promise> promised) {
        Map<String, Standing.Promise> dry = new LinkedHashMap<>();
        left.fields().stream()
                .filter(field -> promised.containsKey(field.id()))
                .filter(field -> !isWet(left, field, promised.get(field.id())))
                .forEach(field -> dry.put(field.id(), promised.get(field.id())));
        return dry;
    }

    private static boolean isWet(Season left, Field field, Standing.Promise promise) {
        return WetGround.of(left, field.ground()).stream()
                .anyMatch(wet -> wet.from().isBefore(promise.day().plusDays(1).atStartOfDay())
                        && wet.to().isAfter(promise.day().atStartOfDay()));
    }

    /** The season in which promised fields may be planted by the promised planter only, and from the promised day on. */
    private static Season pinned(Season left, Map<String, Standing.Promise> promised) {
        double muchMoreThanAnyOther = 100;
        return left.change()
                .fields(left.fields().stream()
                        .map(field -> Optional.ofNullable(promised.get(field.id()))
                                .map(promise -> field.change()
                                        .window(new DateWindow(promise.day(), promise.day()))
                                        .lateWeight(muchMoreThanAnyOther)
                                        .planters(Set.of(promise.planter()))
                                        .field())
                                .orElse(field))
                        .toList())
                .season();
    }

    private static List<List<String>> listsOf(Season season) {
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(Long.parseLong(STEPS)), 1);
        return new SeasonPlanner(CompiledSeason.of(season), options, ProgressListener.SILENT)
                .plan()
                .byPlanter();
    }

    private static Plan played(Season season, List<List<String>> lists, Plan.SeasonSource source, PlanStart start) {
        return PlanRecorder.record(CompiledSeason.of(season), lists, source, start.withPromises(Map.of()));
    }

    /** Late and unserved area, as the score weighs it. */
    private static double late(Plan plan) {
        return -plan.score().medium();
    }

    /** All else that the score weighs, but for fields that are moved. */
    private static double effort(Season left, Plan plan) {
        int promised = left.standing().orElseThrow().promised().size();
        long moved = promised - kept(plan, left.standing().orElseThrow().promised());
        return -plan.score().soft() - moved * left.goals().movedMin();
    }
}
