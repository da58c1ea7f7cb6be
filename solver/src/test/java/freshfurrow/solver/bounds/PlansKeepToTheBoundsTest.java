package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.GoingOnTest;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.ProgressListener;
import freshfurrow.solver.SeasonPlanner;
import freshfurrow.solver.example.RandomPlans;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** No season played out does better than its bounds. */
class PlansKeepToTheBoundsTest {
    private static final int MOST_FIELDS = 20;

    @Property(tries = 150)
    void noPlanOfWhatIsLeftOfASeasonBeatsABound(@ForAll long seed, @ForAll @IntRange(max = 80) int share) {
        Season left = GoingOnTest.left(RandomSeasons.season(seed, MOST_FIELDS), seed, share / 100.0);
        Assume.that(!left.fields().isEmpty());
        assertPlansKeep(left, seed);
    }

    @Property(tries = 150)
    void noPlanBeatsABound(@ForAll long seed) {
        assertPlansKeep(RandomSeasons.season(seed, MOST_FIELDS), seed);
    }

    @Property(tries = 150)
    void noPlanBeatsABoundWhereMixIsMadeAtTheWater(@ForAll long seed, @ForAll @IntRange(max = 80) int share) {
        Season season = RandomSeasons.withMounted(seed, MOST_FIELDS);
        Season left = GoingOnTest.left(
                season.change()
                        .rigs(season.rigs().stream()
                                .map(rig ->
                                        rig.change().extractAt(ExtractAt.WATER).rig())
                                .toList())
                        .season(),
                seed,
                share / 100.0);
        Assume.that(!left.fields().isEmpty());
        assertPlansKeep(left, seed);
    }

    @Property(tries = 150)
    void noPlanBeatsABoundWherePeopleJudgedTheGround(@ForAll long seed) {
        assertPlansKeep(RandomSeasons.withJudgedGround(RandomSeasons.season(seed, MOST_FIELDS), seed), seed);
    }

    @Property(tries = 150)
    void noPlanOfPlantersAndSprayersOfAnyKindBeatsABound(@ForAll long seed, @ForAll @IntRange(max = 80) int share) {
        Season left = GoingOnTest.left(RandomSeasons.withMounted(seed, MOST_FIELDS), seed, share / 100.0);
        Assume.that(!left.fields().isEmpty());
        assertPlansKeep(left, seed);
    }

    @Property(tries = 150)
    void noPlanBeatsABoundWhereFieldsAreFixed(@ForAll long seed) {
        assertPlansKeep(RandomSeasons.withFixedFields(RandomSeasons.season(seed, MOST_FIELDS), seed), seed);
    }

    @Property(tries = 150)
    void noPlanBeatsABoundByMoney(@ForAll long seed) {
        assertPlansKeep(priced(RandomSeasons.season(seed, MOST_FIELDS), seed), seed);
    }

    @Property(tries = 150)
    void noPlanOfPlantersAndSprayersBeatsABoundByMoney(@ForAll long seed, @ForAll @IntRange(max = 80) int share) {
        Season left = GoingOnTest.left(RandomSeasons.withMounted(seed, MOST_FIELDS), seed, share / 100.0);
        Assume.that(!left.fields().isEmpty());
        assertPlansKeep(priced(left, seed), seed);
    }

    @Property(tries = 150)
    void noPlanBeatsABoundByMoneyWhereFieldsGoWithoutExtract(@ForAll long seed) {
        Season season = RandomSeasons.goingWithout(RandomSeasons.season(seed, MOST_FIELDS), new Random(seed));
        assertPlansKeep(priced(season, seed), seed);
    }

    @Test
    void theBoundsOfTheseBillsSaySomething() {
        long halves = new Random(1)
                .longs(60)
                .filter(seed -> {
                    CompiledSeason compiled = CompiledSeason.of(priced(RandomSeasons.season(seed, MOST_FIELDS), seed));
                    Plan plan = RandomPlans.of(compiled, seed).get(0);
                    return -SeasonBounds.of(compiled).forPlan(plan).medium()
                            > -plan.score().medium() / 2;
                })
                .count();

        assertThat(halves).isGreaterThan(10);
    }

    /** Prices of which some are 0, and which may make leaving out pay. */
    private static Season priced(Season season, long seed) {
        Random random = new Random(seed);
        double[] prices =
                random.doubles(10).map(price -> price < 0.2 ? 0 : price).toArray();
        Costs costs = new Costs(
                Optional.empty(),
                prices[0] * 30,
                prices[1] * 20,
                prices[2],
                prices[3] / 2,
                prices[4] * 20,
                prices[5] * 1000,
                prices[6] * 100,
                prices[7] / 100,
                prices[8] * 60,
                Map.of());
        return season.change()
                .goals(season.goals().withByMoney(Optional.of(costs)))
                .season();
    }

    @Property(tries = 8)
    void noSearchedPlanBeatsABound(@ForAll long seed) {
        CompiledSeason compiled = CompiledSeason.of(RandomSeasons.season(seed, MOST_FIELDS));
        PlanningOptions options = new PlanningOptions(Optional.empty(), OptionalLong.of(3_000), seed);
        Plan plan = RandomPlans.record(compiled, new SeasonPlanner(compiled, options, ProgressListener.SILENT).plan());

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
                                    .forPlan(RandomPlans.of(compiled, seed).get(0))
                                    .medium()
                            < 0;
                })
                .count();

        assertThat(late).isGreaterThan(20);
    }

    @Test
    void theBoundsOfEffortSaySomething() {
        long halves = new Random(1)
                .longs(60)
                .filter(seed -> {
                    CompiledSeason compiled = CompiledSeason.of(RandomSeasons.season(seed, MOST_FIELDS));
                    Plan plan = RandomPlans.of(compiled, seed).get(0);
                    return SeasonBounds.of(compiled).forPlan(plan).effortMin()
                            > -plan.score().soft() / 2;
                })
                .count();

        assertThat(halves).isGreaterThan(5);
    }

    private static void assertPlansKeep(Season season, long seed) {
        CompiledSeason compiled = CompiledSeason.of(season);
        SeasonBounds bounds = SeasonBounds.of(compiled);

        List<Plan> plans = RandomPlans.of(compiled, seed);
        for (Plan plan : plans) {
            Plan.Bounds ofPlan = bounds.forPlan(plan);
            assertKeeps(plan, ofPlan);
            plans.stream().filter(other -> isNoWorse(other, plan)).forEach(other -> assertKeeps(other, ofPlan));
        }
    }

    /** Whether what is proven of plans like one holds for another. */
    private static boolean isNoWorse(Plan other, Plan plan) {
        return other.score().medium() >= plan.score().medium()
                && other.totals().unservedHa() <= plan.totals().unservedHa()
                && other.totals().unservedHa() + other.totals().untreatedHa()
                        <= plan.totals().unservedHa() + plan.totals().untreatedHa();
    }

    private static void assertKeeps(Plan plan, Plan.Bounds bounds) {
        assertThat(plan.score().medium()).isLessThanOrEqualTo(bounds.medium());
        assertThat(plan.totals().planterFills()).isGreaterThanOrEqualTo(bounds.planterFills());
        assertThat(plan.totals().waterTrips()).isGreaterThanOrEqualTo(bounds.waterTrips());
        assertThat(plan.totals().unservedHa()).isGreaterThanOrEqualTo(bounds.unservedHa());
        assertThat(plan.totals().lateHaDays()).isGreaterThanOrEqualTo(bounds.lateHaDays());
        assertThat(-plan.score().soft()).isGreaterThanOrEqualTo(bounds.effortMin());
    }
}
