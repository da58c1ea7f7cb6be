package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.Limit;
import freshfurrow.model.plan.Resource;
import java.util.List;
import org.junit.jupiter.api.Test;

final class HeldBackTest {
    private static final Plan PLAN = ExamplePlan.plan();

    private static Limit limit(Resource resource, double shareOfLate, double shareOfWait) {
        return new Limit(resource, 0, 0, 0, shareOfLate, shareOfWait);
    }

    @Test
    void theLargestSharesAreNamedFirstAndThoseBelowAHundredthNotAtAll() {
        Plan plan = PLAN.withLimits(List.of(
                limit(Resource.PLANTER, 0.404, 0),
                limit(Resource.RIG, 0.009, 0.93),
                limit(Resource.COMPOST, 1, 0.011)));

        assertThat(HeldBack.lines(plan))
                .containsExactly(
                        "",
                        "Bottlenecks",
                        "  Late or unplanted area would shrink by 100 % if compost was unlimited from day one,"
                                + " by 40 % if planting took no time",
                        "  Waiting would shrink by 93 % if rig work took no time,"
                                + " by 1 % if compost was unlimited from day one",
                        "  Each figure comes from a short replan with that one limit lifted. The figures overlap, and a longer search",
                        "  may find more.");
    }

    @Test
    void noMoreThanThreeAreNamed() {
        Plan plan = PLAN.withLimits(List.of(
                limit(Resource.PLANTER, 0.5, 0),
                limit(Resource.RIG, 0.4, 0),
                limit(Resource.HOSE, 0.2, 0),
                limit(Resource.WEATHER, 0.3, 0)));

        assertThat(HeldBack.lines(plan).get(2)).contains("50 %", "40 %", "30 %").doesNotContain("20 %");
    }

    @Test
    void whatNoOneLimitWouldShrinkIsSaidToBeSo() {
        assertThat(HeldBack.lines(PLAN.withLimits(List.of(limit(Resource.RIG, 0, 0)))))
                .contains("  Late or unplanted area: lifting any one limit by itself would not help");
    }

    @Test
    void aPlanInTimeWithLessThanAMinuteOfWaitingIsHeldBackByNothing() {
        Plan inTime = inTime(new Plan.Score(0, 0, -10), 0).withLimits(List.of(limit(Resource.RIG, 0, 0)));

        assertThat(HeldBack.lines(inTime))
                .containsExactly("", "No bottleneck: every field is planted in its window and no planter waits.");
    }

    @Test
    void whereNothingIsLateButSomeGoesWithoutExtractThatIsNamed() {
        Plan plan = inTime(new Plan.Score(0, -400, -10), 2).withLimits(List.of(limit(Resource.COMPOST, 1, 0)));

        assertThat(HeldBack.lines(plan))
                .contains("  Area without extract would shrink by 100 % if compost was unlimited from day one");
        assertThat(HeldBack.most(plan))
                .isEqualTo("Area without extract would shrink by 100 % if compost was unlimited from day one");
    }

    @Test
    void whereSomeIsLateAndSomeGoesWithoutExtractBothAreNamed() {
        Plan plan = withTotals(new Plan.Score(0, -400, -10), 2, 1, 0.9)
                .withLimits(List.of(limit(Resource.COMPOST, 0.5, 0)));

        assertThat(HeldBack.most(plan))
                .isEqualTo("Area that is late, unplanted or without extract would shrink by 50 % if compost was"
                        + " unlimited from day one");
    }

    @Test
    void nothingIsSaidOfLimitsThatWereNotWorkedOut() {
        assertThat(HeldBack.lines(PLAN)).isEmpty();
    }

    /** Planters wait for less than a minute. */
    private static Plan inTime(Plan.Score score, double untreatedHa) {
        return withTotals(score, untreatedHa, 0, 0.9);
    }

    private static Plan withTotals(Plan.Score score, double untreatedHa, double lateHaDays, double waitMin) {
        Plan.Totals totals = PLAN.totals();
        return new Plan(
                PLAN.season(),
                score,
                new Plan.Totals(
                        totals.areaHa(),
                        untreatedHa,
                        0,
                        lateHaDays,
                        totals.planterFills(),
                        totals.waterTrips(),
                        totals.compostTrips(),
                        totals.batches(),
                        totals.compostKg(),
                        totals.dumpedL(),
                        waitMin,
                        totals.idleMin(),
                        totals.overtimeMin(),
                        totals.driveKm(),
                        totals.smallestMarginMin(),
                        totals.finish()),
                PLAN.planters(),
                PLAN.rigs(),
                PLAN.loads(),
                PLAN.batches(),
                List.of(),
                PLAN.bounds(),
                PLAN.limits());
    }
}
