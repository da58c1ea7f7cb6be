package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.GoingOnTest;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.ProgressListener;
import freshfurrow.solver.SeasonPlanner;
import freshfurrow.solver.construction.FirstLists;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** No season played out does better than its bounds, and none breaks a row of the relaxation that they come from. */
class PlansKeepToTheBoundsTest {
    private static final int MOST_FIELDS = 20;
    private static final double DM2_PER_HA = 1e6;

    @Property(tries = 400)
    void whatAPlanPlantsKeepsToEveryRow(@ForAll long seed) {
        assertKeepsToEveryRow(RandomSeasons.season(seed, MOST_FIELDS), seed);
    }

    @Property(tries = 400)
    void whatAPlanOfWhatIsLeftPlantsKeepsToEveryRow(@ForAll long seed, @ForAll @IntRange(max = 80) int share) {
        Season left = GoingOnTest.left(RandomSeasons.season(seed, MOST_FIELDS), seed, share / 100.0);
        Assume.that(!left.fields().isEmpty());

        assertKeepsToEveryRow(left, seed);
    }

    private static void assertKeepsToEveryRow(Season season, long seed) {
        CompiledSeason compiled = CompiledSeason.of(season);
        Relaxation relaxation = Relaxation.of(compiled, FieldGroups.of(compiled), Aim.unserved());

        for (Plan plan : plans(compiled, seed)) {
            double[] planted = planted(relaxation, season, plan);
            for (int v = 0; v < planted.length; v++) {
                assertThat(planted[v]).isBetween(0.0, relaxation.program().upper(v));
            }
            for (LinearProgram.Row row : relaxation.program().rows()) {
                double sum = row.terms().stream()
                        .mapToDouble(term -> term.coefficient() * planted[term.variable()])
                        .sum();
                assertThat(sum).as(row.toString()).isGreaterThanOrEqualTo(row.atLeast() - 0.01);
            }
        }
    }

    @Property(tries = 150)
    void noPlanOfWhatIsLeftOfASeasonBeatsABound(@ForAll long seed, @ForAll @IntRange(max = 80) int share) {
        Season left = GoingOnTest.left(RandomSeasons.season(seed, MOST_FIELDS), seed, share / 100.0);
        Assume.that(!left.fields().isEmpty());
        CompiledSeason compiled = CompiledSeason.of(left);
        SeasonBounds bounds = SeasonBounds.of(compiled);

        for (Plan plan : plans(compiled, seed)) {
            assertKeeps(plan, bounds.forPlan(plan));
        }
    }

    @Property(tries = 150)
    void noPlanBeatsABound(@ForAll long seed) {
        CompiledSeason compiled = CompiledSeason.of(RandomSeasons.season(seed, MOST_FIELDS));
        SeasonBounds bounds = SeasonBounds.of(compiled);

        for (Plan plan : plans(compiled, seed)) {
            assertKeeps(plan, bounds.forPlan(plan));
        }
    }

    @Property(tries = 8)
    void noSearchedPlanBeatsABound(@ForAll long seed) {
        CompiledSeason compiled = CompiledSeason.of(RandomSeasons.season(seed, MOST_FIELDS));
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(3_000), seed);
        Plan plan = record(compiled, new SeasonPlanner(compiled, options, ProgressListener.SILENT).plan());

        assertKeeps(plan, SeasonBounds.of(compiled).forPlan(plan));
    }

    @Test
    void theBoundsOfTheseSeasonsSaySomething() {
        // else the tests above would hold whatever the bounds are
        long late = new Random(1)
                .longs(60)
                .filter(seed -> {
                    CompiledSeason compiled = CompiledSeason.of(RandomSeasons.season(seed, MOST_FIELDS));
                    return SeasonBounds.of(compiled)
                                    .forPlan(plans(compiled, seed).get(0))
                                    .medium()
                            < 0;
                })
                .count();

        assertThat(late).isGreaterThan(20);
    }

    private static void assertKeeps(Plan plan, Plan.Bounds bounds) {
        assertThat(plan.score().medium()).isLessThanOrEqualTo(bounds.medium());
        assertThat(plan.totals().planterFills()).isGreaterThanOrEqualTo(bounds.planterFills());
        assertThat(plan.totals().waterTrips()).isGreaterThanOrEqualTo(bounds.waterTrips());
        assertThat(plan.totals().unservedHa()).isGreaterThanOrEqualTo(bounds.unservedHa());
        assertThat(plan.totals().lateHaDays()).isGreaterThanOrEqualTo(bounds.lateHaDays());
    }

    /** The best of the first lists, and lists at random. */
    private static List<Plan> plans(CompiledSeason compiled, long seed) {
        List<String> ids =
                compiled.season().fields().stream().map(field -> field.id()).toList();
        List<Plan> plans = new ArrayList<>();
        plans.add(record(
                compiled,
                FirstLists.best(compiled).byPlanter().stream()
                        .map(list -> list.stream().map(ids::get).toList())
                        .toList()));
        for (int i = 0; i < 4; i++) {
            plans.add(record(compiled, RandomSeasons.lists(compiled.season(), seed + i)));
        }
        return plans;
    }

    private static Plan record(CompiledSeason compiled, List<List<String>> lists) {
        return PlanRecorder.record(
                compiled,
                lists,
                new Plan.SeasonSource("", "", "", compiled.season().units()));
    }

    /** Area planted by the end of each day, by variable, dm2. */
    private static double[] planted(Relaxation relaxation, Season season, Plan plan) {
        double[] planted = new double[relaxation.program().variables()];
        for (int g = 0; g < relaxation.groups().size(); g++) {
            List<String> ids = relaxation.groups().get(g).fields().stream()
                    .map(field -> season.fields().get(field).id())
                    .toList();
            for (int day = 0; day < relaxation.days(); day++) {
                int variable = relaxation.planted(g, day);
                long by = plantedBy(season, plan, ids, day);
                if (variable < 0) {
                    assertThat(by).isZero();
                } else {
                    planted[variable] = by;
                }
            }
        }
        return planted;
    }

    private static long plantedBy(Season season, Plan plan, List<String> ids, int lastDay) {
        return plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .filter(piece -> ids.contains(piece.field()))
                .filter(piece ->
                        ChronoUnit.DAYS.between(season.first(), piece.start().toLocalDate()) <= lastDay)
                .mapToLong(piece -> Math.round(piece.areaHa() * DM2_PER_HA))
                .sum();
    }
}
