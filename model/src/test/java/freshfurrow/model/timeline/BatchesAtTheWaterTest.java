package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Plan.Load;
import org.junit.jupiter.api.Test;

/**
 * The rig mixes at the well, 200 s from the fields, and is at the well with its water from 06:08:20 on. For a transfer at
 * 07:20:00 it leaves at 07:16:40.
 */
class BatchesAtTheWaterTest {
    private static WorkedSeason season() {
        return new WorkedSeason().rig("R1", rig -> rig.atTheWater());
    }

    private static WorkedSeason season(double nurseTankL) {
        return new WorkedSeason().rig("R1", rig -> rig.atTheWater().nurseTank(nurseTankL));
    }

    @Test
    void oneTripServesTwoFills() {
        // 10 ha: 2000 L and 100 kg, two batches of 900 s with 180 s between: 06:43:40 to 06:58:40, 07:01:40 to 07:16:40
        WorkedPlan plan = season().field("A", 10).plan("A");

        assertThat(plan.rig("R1"))
                .containsExactly(
                        "1 06:00:00 - 1 06:01:40 move yard to well",
                        "1 06:01:40 - 1 06:08:20 draw well 2000.000 L",
                        "1 06:43:40 - 1 06:58:40 extract well",
                        "1 06:58:40 - 1 07:01:40 clean well",
                        "1 07:01:40 - 1 07:16:40 extract well",
                        "1 07:16:40 - 1 07:20:00 move well to A",
                        "1 07:20:00 - 1 07:33:20 transfer A 1000.000 L",
                        "1 07:33:20 - 1 07:36:20 clean A",
                        "1 08:56:40 - 1 09:10:00 transfer A 1000.000 L");
        assertThat(plan.plan().totals().waterTrips()).isEqualTo(1);
    }

    @Test
    void theMixAgesFromItsOldestBatchOn() {
        // 06:58:40 + 5 h
        WorkedPlan plan = season().field("A", 10).plan("A");

        assertThat(plan.loads())
                .containsExactly(
                        "P1 R1 1000.000 L, old 1 11:58:40, used up 1 08:56:40",
                        "P1 R1 1000.000 L, old 1 11:58:40, used up 1 10:33:20");
    }

    @Test
    void onlyWhatWillBeCarriedIsDrawn() {
        // 6 ha: 1200 L in 240 s
        WorkedPlan plan = season().field("A", 6).plan("A");

        assertThat(plan.rig("R1", "draw")).containsExactly("1 06:01:40 - 1 06:05:40 draw well 1200.000 L");
    }

    @Test
    void anotherPlanterIsFilledFromTheSameTrip() {
        // P2 asks at 07:20:00 too: clean to 07:36:20, drive to 07:38:00. Nothing is left for P1, so the rig is back at
        // the
        // well at 07:51:20 + 200 s, draws 1000 L in 200 s and mixes one batch before it leaves at 08:53:20
        WorkedPlan plan = season().planter("P2", planter -> planter)
                .field("A", 10)
                .field("B", 5)
                .plan("A", "B");

        assertThat(plan.planter("P2", "wait", "fill"))
                .containsExactly("1 07:20:00 - 1 07:38:00 wait B rig", "1 07:38:00 - 1 07:51:20 fill B");
        assertThat(plan.load(2).batches()).isEqualTo(plan.load(1).batches());
        assertThat(plan.rig("R1"))
                .endsWith(
                        "1 07:51:20 - 1 07:54:40 move B to well",
                        "1 07:54:40 - 1 07:58:00 draw well 1000.000 L",
                        "1 08:38:20 - 1 08:53:20 extract well",
                        "1 08:53:20 - 1 08:56:40 move well to A",
                        "1 08:56:40 - 1 09:10:00 transfer A 1000.000 L",
                        "1 09:10:00 - 1 09:13:00 clean A");
    }

    @Test
    void mixOfAnotherRecipeIsDumpedBeforeTheRigGoesForWater() {
        // 1000 L of 2000 L are left when P2 asks for another recipe: clean to 07:36:20, dump at the rate of a transfer
        // in
        // 500 s, at the well at 07:48:00, 200 L in 40 s, 40 of 50 kg in 720 s to 08:00:40, at B at 08:04:00
        WorkedPlan plan = season().recipe("strong", 100, 20, 5 * 3600)
                .planter("P2", planter -> planter)
                .field("A", 10)
                .field("B", 2, field -> field.recipe("strong"))
                .plan("A", "B");

        assertThat(plan.rig("R1", "dump")).containsExactly("1 07:36:20 - 1 07:44:40 dump A 1000.000 L");
        assertThat(plan.fillStarts("P2")).containsExactly("1 08:04:00");
        assertThat(plan.plan().totals().dumpedL()).isEqualTo(1000, within(1e-6));
        // 3 fills x 30 + 3 trips x 20 + waiting 44 + driving (2 x 600 + 100 + 5 x 200 s) 38.33 + 50 kg x 10
        assertThat(plan.plan().score().soft()).isEqualTo(-732);
    }

    @Test
    void aLargerNurseTankAsksForNoMoreFills() {
        // 30 ha are six tanks of 1,000 L. A fill of 30 min for each rest of 300 L outweighs the share of a trip of 20
        // min that it saves
        WorkedPlan plan = season(1300).field("A", 30).plan("A");

        assertThat(season(1000).field("A", 30).plan("A").plan().loads().size()).isEqualTo(6);
        assertThat(plan.plan().loads().size()).isEqualTo(6);
        assertThat(plan.rig("R1", "draw")).hasSize(6).allMatch(draw -> draw.endsWith(" 1000.000 L"));
    }

    @Test
    void theRestOfAMixIsMadeWhereTheTripThatItSavesOutweighsWhatTheTankLacks() {
        // 1,900 L: the second fill lacks 10 %, 3 min of 30, and saves 9/19 of 20 min
        WorkedPlan plan = season(1900).field("A", 19).plan("A");

        assertThat(plan.rig("R1", "draw")).hasSize(2).allMatch(draw -> draw.endsWith(" 1900.000 L"));
    }

    @Test
    void theRestOfAFieldIsMadeWithTheLastMix() {
        // 6.5 ha: 1,300 L, as little more water as two fills
        WorkedPlan plan = season(1300).field("A", 6.5).plan("A");

        assertThat(plan.plan().totals().waterTrips()).isEqualTo(1);
        assertThat(plan.plan().loads().size()).isEqualTo(2);
    }

    @Test
    void aMixForLessThanATankIsAsLargeAsItsAgeAllows() {
        // hold 3,000 s: a batch made at the well ends 200 s before the transfer; 200 + 300 + 0.11 s a m2 = 3,000 s give
        // 22,727 m2
        WorkedPlan plan = season(4000).hold(3000).field("A", 20).plan("A");

        assertThat(plan.load(1).litres()).isBetween(450.0, 454.55);
    }

    @Test
    void mixThatAgesOutOnTheRigIsDumped() {
        // Old at 06:58:40 + 13,000 s = 10:35:20. P2 at B, 3000 s away, takes 100 L from 08:26:20 to 08:32:10; the rig
        // is
        // back at A at 09:22:10 and 4390 s are left: 300 + 0.11 x = 4390 gives 37,182 m2 = 743.6 L of the 900 L on
        // board
        WorkedPlan plan = season().hold(13_000)
                .planter("P2", planter -> planter)
                .road("A", "B", 30_000)
                .field("A", 10)
                .field("B", 0.5)
                .plan("A", "B");

        assertThat(plan.fillStarts("P2")).containsExactly("1 08:26:20");
        assertThat(plan.fillStarts("P1").subList(0, 2)).containsExactly("1 07:20:00", "1 09:22:10");
        assertThat(plan.load(3).litres()).isBetween(738.6, 743.64);
        assertThat(plan.rig("R1", "dump")).singleElement().asString().contains("dump A");
        assertThat(plan.plan().totals().dumpedL()).isEqualTo(900 - plan.load(3).litres(), within(0.002));
        assertThat(plan.unserved()).isEmpty();
        assertThat(plan.plan().loads()).allSatisfy(BatchesAtTheWaterTest::appliedInTime);
    }

    private static void appliedInTime(Load load) {
        assertThat(load.lastDrop()).isBeforeOrEqualTo(load.deadline());
    }
}
