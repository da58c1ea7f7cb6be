package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.GoingOnTest;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.ProgressListener;
import freshfurrow.solver.SeasonPlanner;
import freshfurrow.solver.example.RandomPlans;
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

    private static void assertPlansKeep(Season season, long seed) {
        CompiledSeason compiled = CompiledSeason.of(season);
        SeasonBounds bounds = SeasonBounds.of(compiled);

        for (Plan plan : RandomPlans.of(compiled, seed)) {
            assertKeeps(plan, bounds.forPlan(plan));
        }
    }

    private static void assertKeeps(Plan plan, Plan.Bounds bounds) {
        assertThat(plan.score().medium()).isLessThanOrEqualTo(bounds.medium());
        assertThat(plan.totals().planterFills()).isGreaterThanOrEqualTo(bounds.planterFills());
        assertThat(plan.totals().waterTrips()).isGreaterThanOrEqualTo(bounds.waterTrips());
        assertThat(plan.totals().unservedHa()).isGreaterThanOrEqualTo(bounds.unservedHa());
        assertThat(plan.totals().lateHaDays()).isGreaterThanOrEqualTo(bounds.lateHaDays());
    }
}
