package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * A planter of 5 m2/s, so that 5 ha, a full tank, take 10,000 s, a hold time of 11,000 s, and two rigs. The big one makes one batch of
 * a full tank: 300 s + 500 s for the transfer and 10,000 s are in time. The small one makes batches of 6 kg, 0.6 ha: of five, 3
 * ha, the oldest is 4 x (180 s + 900 s) = 4,320 s old when the transfer begins, and 300 s + 3 x 2,100 s more at the last drop: 10,920 s.
 * With a sixth batch, and a clean of 180 s before it, it would be too old. In 35 ha are seven tanks, and twelve loads of 3 ha.
 */
class LoadChoiceTest {
    private static WorkedSeason season() {
        return new WorkedSeason()
                .days(5)
                .hold(11_000)
                .planter("P1", planter -> planter.capacity(10, 2, 0.25))
                .field("A", 15);
    }

    private static WorkedSeason withSmallRig() {
        return season().rig("R1", rig -> rig.batchCompost(6)).rig("R2", rig -> rig);
    }

    @Test
    void aRigMoreWhoseLoadsAgeHoldsDownAsksForNoMoreFills() {
        assertThat(season().plan("A").plan().loads()).hasSize(3);
        assertThat(withSmallRig().plan("A").plan().loads()).hasSize(3);
    }

    @Test
    void aSmallRigAloneBringsWhatAgeAllows() {
        WorkedPlan plan = season().rig("R1", rig -> rig.batchCompost(6)).plan("A");

        assertThat(plan.load(1).litres()).isBetween(596.0, 600.0);
    }

    @Test
    void theSmallRigIsAskedWhereTheBigOneWouldKeepThePlanterWaitingForMuchLonger() {
        // 30 min for the fill, 10 min for the transfer and 100 min for 3 ha, against 280 min more for 5 ha
        WorkedPlan plan =
                withSmallRig().rig("R2", rig -> rig.hours("12:00/20:00")).plan("A");

        assertThat(plan.load(1).rig()).isEqualTo("R1");
    }

    @Test
    void aRigThatCanBringSomethingInTimeComesWhereTheFirstOneCanBringNothing() {
        // what R1 makes at the well is 1,600 s old when it is at A
        WorkedPlan plan = new WorkedSeason()
                .hold(1500)
                .road("A", "well", 16_000)
                .rig("R1", rig -> rig.atTheWater())
                .rig("R2", rig -> rig)
                .field("A", 1)
                .plan("A");

        assertThat(plan.unserved()).isEmpty();
        assertThat(plan.plan().loads()).allMatch(load -> load.rig().equals("R2"));
    }
}
