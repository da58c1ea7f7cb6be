package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan.Load;
import org.junit.jupiter.api.Test;

/** The size of a load may fall short of the true largest one by half a hundredth of the tank: 5 L of 1,000 L. */
class HoldTimeTest {
    @Test
    void aShortHoldTimeHalvesTheLoad() {
        // x m2 take 300 s + 0.02 x / 2 s to transfer and x / 10 s to plant: 300 + 0.11 x = 3050 gives 25,000 m2 = 500 L
        WorkedPlan plan = new WorkedSeason().hold(3050).field("A", 4.9).plan("A");

        assertThat(plan.load(1).litres()).isBetween(495.0, 500.0);
        assertThat(plan.time(plan.load(1).deadline())).isEqualTo("1 08:10:50"); // 07:20:00 + 3050 s
        assertThat(plan.plan().loads()).hasSize(2);
        assertThat(plan.plan().totals().areaHa()).isEqualTo(4.9);
    }

    @Test
    void theNextLoadIsAskedForWithTheLastDrop() {
        WorkedPlan plan = new WorkedSeason().hold(3050).field("A", 4.9).plan("A");

        assertThat(plan.fillStarts("P1"))
                .containsExactly("1 07:20:00", plan.time(plan.load(1).lastDrop()));
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void aLoadThatJustFitsIsTakenWhole() {
        // a full tank needs 300 + 500 + 5000 s
        WorkedPlan plan = new WorkedSeason().hold(5800).field("A", 5).plan("A");

        assertThat(plan.loads()).containsExactly("P1 R1 1000.000 L, old 1 08:56:40, used up 1 08:56:40");
        assertThat(plan.plan().totals().smallestMarginMin()).isZero();
    }

    @Test
    void anotherBatchIsNotWorthIt() {
        // 2 ha from two batches of 10 kg: 900 + 180 s from the first end to the transfer, then 300 + 200 + 2000 s =
        // 3580 s.
        // More than 2 ha need a third: 180 s more at least, and 3760 s are more than 3700.
        WorkedPlan plan = new WorkedSeason()
                .hold(3700)
                .rig("R1", rig -> rig.batchCompost(10).hours("05:00/20:00"))
                .field("A", 5)
                .plan("A");

        assertThat(plan.load(1).litres()).isBetween(395.0, 400.0);
        assertThat(plan.load(1).batches()).hasSize(2);
    }

    @Test
    void noLoadIsAppliedTooOld() {
        WorkedPlan plan =
                new WorkedSeason().hold(2000).field("A", 5).field("B", 7).plan("A B");

        assertThat(plan.plan().loads()).hasSizeGreaterThan(2).allSatisfy(HoldTimeTest::appliedInTime);
    }

    private static void appliedInTime(Load load) {
        assertThat(load.lastDrop()).isBeforeOrEqualTo(load.deadline());
        assertThat(load.dumpedL()).isZero();
    }
}
