package freshfurrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.goals.Counters;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/**
 * The number of loads against a proof by constraint programming. Without travel, with one recipe, open windows and a long
 * hold time a planter with tank area T that plants area A takes ceil(A / T) loads, whatever the order. Fields that only some
 * planters may plant make it a matter of who plants which: find the shares that waste the least of the tanks.
 */
class FewestLoadsTest {
    private static final int PLANTERS = 3;
    private static final int FIELDS = 14;
    private static final int[] TANK_HA = {9, 11, 13};

    @BeforeAll
    static void loadLibraries() {
        Loader.loadNativeLibraries();
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6})
    void thePlanHasTheFewestLoadsThereCanBe(long seed) {
        Season season = OnlyLoadsCount.season(FIELDS, TANK_HA, seed);
        CompiledSeason compiled = CompiledSeason.of(season);
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(20_000), seed);

        Counters played = played(
                compiled,
                new SeasonPlanner(compiled, options, ProgressListener.SILENT)
                        .plan()
                        .byPlanter());

        assertThat(played.unservedDm2()).isZero();
        assertThat(played.fills()).isEqualTo(provenLoads(season));
    }

    @Test
    void theFirstListsAloneDoNotHaveTheFewestLoads() {
        // else the proof would show nothing about the search
        assertThat(IntStream.rangeClosed(1, 6).filter(seed -> {
                    Season season = OnlyLoadsCount.season(FIELDS, TANK_HA, seed);
                    CompiledSeason compiled = CompiledSeason.of(season);
                    return new ListPlayer(compiled)
                                    .play(FirstLists.best(compiled))
                                    .fills()
                            > provenLoads(season);
                }))
                .isNotEmpty();
    }

    private static Counters played(CompiledSeason compiled, List<List<String>> plan) {
        List<String> ids =
                compiled.season().fields().stream().map(field -> field.id()).toList();
        return new ListPlayer(compiled)
                .play(new FieldLists(plan.stream()
                        .map(list -> list.stream().map(ids::indexOf).toList())
                        .toList()));
    }

    /** Fewest loads, proven: each field goes to one planter that may plant it, loads times tank cover each planter's area. */
    private static long provenLoads(Season season) {
        CpModel model = new CpModel();
        LinearExprBuilder[] areaOf = IntStream.range(0, PLANTERS)
                .mapToObj(p -> LinearExpr.newBuilder())
                .toArray(LinearExprBuilder[]::new);
        season.fields().forEach(field -> {
            List<Literal> choices = new ArrayList<>();
            for (int p = 0; p < PLANTERS; p++) {
                if (field.allows(season.applicators().get(p))) {
                    Literal plants = model.newBoolVar(field.id() + " by " + p);
                    choices.add(plants);
                    areaOf[p].addTerm(plants, Math.round(field.areaHa() * 10));
                }
            }
            model.addExactlyOne(choices);
        });
        IntVar[] loads = new IntVar[PLANTERS];
        for (int p = 0; p < PLANTERS; p++) {
            loads[p] = model.newIntVar(0, 1000, "loads of " + p);
            model.addGreaterOrEqual(LinearExpr.term(loads[p], TANK_HA[p] * 10L), areaOf[p]);
        }
        model.minimize(LinearExpr.sum(loads));
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1);

        assertThat(solver.solve(model)).isEqualTo(CpSolverStatus.OPTIMAL);
        return Math.round(solver.objectiveValue());
    }
}
