package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.ProgressListener;
import freshfurrow.solver.SeasonPlanner;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bound and plan against a proof by constraint programming, in seasons without travel in which a planter plants two fields a
 * day. There a season is no more than a choice of a planter and a day for each field.
 */
class FieldsOnDaysTest {
    private static final int DAYS = 12;
    private static final int FIELDS_A_DAY = 2;

    @BeforeAll
    static void loadLibraries() {
        Loader.loadNativeLibraries();
    }

    @ParameterizedTest(name = "{0} fields, {1} planters, seed {2}")
    @CsvSource({"12, 1, 1", "14, 1, 2", "16, 1, 3", "16, 2, 4", "18, 2, 5", "20, 2, 6"})
    void proofBoundAndPlanAreOne(int fields, int planters, long seed) {
        Season season = season(fields, planters, seed);
        CompiledSeason compiled = CompiledSeason.of(season);
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(60_000), seed);
        Plan plan = PlanRecorder.record(
                compiled,
                new SeasonPlanner(compiled, options, ProgressListener.SILENT).plan(),
                new Plan.SeasonSource("", "", "", season.units()));
        long proven = provenLate(season);

        assertThat(proven).isPositive();
        assertThat(SeasonBounds.of(compiled).forPlan(plan).medium()).as("bound").isEqualTo(-proven);
        assertThat(plan.score().medium()).as("plan").isEqualTo(-proven);
    }

    private static Season season(int fields, int planters, long seed) {
        Random random = new Random(seed);
        TwoFieldsADay season = new TwoFieldsADay(planters);
        for (int i = 0; i < fields; i++) {
            int opens = random.nextInt(3);
            String[] allowed = random.nextInt(4) == 0 ? new String[] {"P" + random.nextInt(planters)} : new String[0];
            season.field(opens, opens + random.nextInt(3), 1 + random.nextInt(3), allowed);
        }
        return season.season(DAYS);
    }

    /** Least late area, weighted, in hundredths of ha-days, proven: each field on one day with one planter. */
    private static long provenLate(Season season) {
        int planters = season.applicators().size();
        CpModel model = new CpModel();
        List<List<Literal>> onDay = new ArrayList<>();
        for (int i = 0; i < planters * DAYS; i++) {
            onDay.add(new ArrayList<>());
        }
        LinearExprBuilder late = LinearExpr.newBuilder();
        for (Field field : season.fields()) {
            List<Literal> choices = new ArrayList<>();
            int opens = day(season, field.window().first());
            int closes = day(season, field.window().last());
            for (int p = 0; p < planters; p++) {
                for (int day = opens;
                        day < DAYS && field.allows(season.applicators().get(p));
                        day++) {
                    Literal choice = model.newBoolVar(field.id() + " by " + p + " on " + day);
                    choices.add(choice);
                    onDay.get(p * DAYS + day).add(choice);
                    late.addTerm(
                            choice, Math.round(100 * field.lateWeight() * field.areaHa()) * Math.max(0, day - closes));
                }
            }
            model.addExactlyOne(choices);
        }
        for (List<Literal> choices : onDay) {
            model.addLessOrEqual(LinearExpr.sum(choices.toArray(Literal[]::new)), FIELDS_A_DAY);
        }
        model.minimize(late);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1);

        assertThat(solver.solve(model)).isEqualTo(CpSolverStatus.OPTIMAL);
        return Math.round(solver.objectiveValue());
    }

    private static int day(Season season, LocalDate date) {
        return (int) ChronoUnit.DAYS.between(season.first(), date);
    }
}
