package freshfurrow.solver;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.example.SmallSeasons;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.bounds.Enumeration;
import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;

/** Which fields get extract where there is not compost for all, and the others may be planted without. */
class ScarceCompostTest {
    private static final int[] TANK_HA = {9, 11, 13};
    private static final double COMPOST_KG_PER_HA = 2;

    @BeforeAll
    static void loadLibraries() {
        Loader.loadNativeLibraries();
    }

    /**
     * Against a proof by constraint programming: with time for everything, the compost goes where it is worth most. Areas are whole thousandths of a
     * hectare there, and a field on which the compost runs out is treated in part.
     */
    @ParameterizedTest
    @Seeds({1, 2, 3, 4})
    void compostGoesToTheFieldsWhereItIsWorthMost(long seed) {
        int fields = 12 + (int) (2 * seed);
        Season season = scarce(OnlyLoadsCount.season(fields, TANK_HA, seed), 3, 0.4, seed);

        Plan plan = planned(season, 20_000, seed);

        assertThat(plan.unserved()).isEmpty();
        assertThat((double) plan.score().medium())
                .isBetween(-provenUntreated(season) * 300 - 3, -provenUntreated(season) * 300 + 1);
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5})
    void theSearchFindsTheBestPlanOfAll(long seed) {
        Season season = scarce(small(seed, 6), 2, 0.5, seed);

        assertThat(planned(season, 30_000, seed).score()).isEqualTo(best(season).score());
    }

    @ParameterizedTest
    @Seeds({1, 2, 3})
    void aLargerWeightNeverTreatsLess(long seed) {
        double[] untreatedHa = DoubleStream.of(0, 0.5, 2, 8, 30)
                .map(days ->
                        best(scarce(small(seed, 5), days, 0.5, seed)).totals().untreatedHa())
                .toArray();

        assertThat(untreatedHa).isSortedAccordingTo((one, other) -> Double.compare(other, one));
    }

    @ParameterizedTest
    @Seeds({1, 2, 3})
    void moreCompostNeverTreatsLess(long seed) {
        double[] untreatedHa = DoubleStream.of(0.1, 0.3, 0.6, 1)
                .map(share ->
                        best(scarce(small(seed, 5), 8, share, seed)).totals().untreatedHa())
                .toArray();

        assertThat(untreatedHa).isSortedAccordingTo((one, other) -> Double.compare(other, one));
    }

    @ParameterizedTest
    @Seeds({1, 2})
    void aWeightOfZeroTreatsNothingThatTakesAFill(long seed) {
        Plan plan = planned(scarce(small(seed, 8), 0, 1, seed), 20_000, seed);

        assertThat(plan.totals().planterFills()).isZero();
        assertThat(plan.unserved()).isEmpty();
    }

    private static Season small(long seed, int fields) {
        Season season = SmallSeasons.season(seed);
        return season.change().fields(season.fields().subList(0, fields)).season();
    }

    /** Fields of different worth, and compost for a share of them. */
    private static Season scarce(Season season, double untreatedDays, double share, long seed) {
        Random random = new Random(seed);
        List<Field> fields = season.fields().stream()
                .map(field -> field.change()
                        .extractWeight(0.5 * (1 + random.nextInt(6)))
                        .field())
                .toList();
        double needKg = fields.stream()
                .mapToDouble(
                        field -> field.areaHa() * season.recipe(field.recipe()).compostKgPerHa())
                .sum();
        return season.change()
                .fields(fields)
                .compost(List.of(new CompostLot("windrow", share * needKg, season.first())))
                .goals(season.goals().withUntreatedDays(OptionalDouble.of(untreatedDays)))
                .season();
    }

    private static Plan planned(Season season, long steps, long seed) {
        CompiledSeason compiled = CompiledSeason.of(season);
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(steps), seed);
        return record(compiled, new SeasonPlanner(compiled, options, ProgressListener.SILENT).plan());
    }

    private static Plan best(Season season) {
        CompiledSeason compiled = CompiledSeason.of(season);
        return record(
                compiled,
                Enumeration.best(compiled, StopSignal.untilTold()).orElseThrow().orders(season));
    }

    private static Plan record(CompiledSeason compiled, PlantingOrders orders) {
        return PlanRecorder.record(compiled, orders, Plan.SeasonSource.of(compiled.season(), "", ""));
    }

    /** The least untreated area there can be, each field by its weight, proven; ha. */
    private static double provenUntreated(Season season) {
        CpModel model = new CpModel();
        LinearExprBuilder treated = LinearExpr.newBuilder();
        LinearExprBuilder worth = LinearExpr.newBuilder();
        double all = 0;
        for (Field field : season.fields()) {
            IntVar area = model.newIntVar(0, Math.round(field.areaHa() * 1000), field.id());
            treated.add(area);
            worth.addTerm(area, Math.round(field.extractWeight() * 2));
            all += field.areaHa() * field.extractWeight();
        }
        model.addLessOrEqual(treated, Math.round(season.compost().get(0).massKg() / COMPOST_KG_PER_HA * 1000));
        model.maximize(worth);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1);
        assertThat(solver.solve(model)).isEqualTo(CpSolverStatus.OPTIMAL);
        return all - solver.objectiveValue() / 2000;
    }
}
