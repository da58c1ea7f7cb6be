package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.WorkedSeason.hours;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.WorkHours;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Loads are asked for at 07:20:00, 08:56:40 and 10:33:20. After the second the nurse tank is empty and the rig free at
 * 09:13:00.
 */
class WaterTest {
    @Test
    void aDailyLimitSendsTheRigToAnotherPoint() {
        // 6000 m to the pond: 600 s each way
        WorkedPlan plan = new WorkedSeason()
                .waterPoint("well", OptionalDouble.of(2000), WorkHours.ALWAYS, 0)
                .waterPoint("pond", OptionalDouble.empty(), WorkHours.ALWAYS, 0)
                .road("pond", "A", 6000)
                .field("A", 15)
                .plan("A");

        assertThat(plan.rig("R1", "draw"))
                .containsExactly(
                        "1 06:01:40 - 1 06:08:20 draw well 2000.000 L", "1 09:23:00 - 1 09:29:40 draw pond 2000.000 L");
        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "1 08:56:40", "1 10:33:20");
    }

    @Test
    void whatTheLimitLeavesIsDrawnWhenItIsEnoughForTheLoad() {
        // 2500 - 2000 = 500 L are left and the last 2 ha need 400 L
        WorkedPlan plan = new WorkedSeason()
                .waterPoint("well", OptionalDouble.of(2500), WorkHours.ALWAYS, 0)
                .field("A", 12)
                .plan("A");

        assertThat(plan.rig("R1", "draw")).last().isEqualTo("1 09:16:20 - 1 09:18:00 draw well 500.000 L");
        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "1 08:56:40", "1 10:33:20");
    }

    @Test
    void aLimitThatLeavesAGoodPartOfALoadIsUsedToday() {
        // 500 L are left where 1000 L lack: half a load today rather than none until tomorrow
        WorkedPlan plan = new WorkedSeason()
                .waterPoint("well", OptionalDouble.of(2500), WorkHours.ALWAYS, 0)
                .field("A", 15)
                .plan("A");

        assertThat(plan.plan().loads()).extracting(load -> load.litres()).containsExactly(1000.0, 1000.0, 500.0, 500.0);
        assertThat(plan.rig("R1", "draw"))
                .endsWith(
                        "1 09:16:20 - 1 09:18:00 draw well 500.000 L", "2 06:03:20 - 2 06:10:00 draw well 2000.000 L");
    }

    @Test
    void aLimitThatLeavesTooLittleMakesThePlanterWaitForTheNextDay() {
        // 200 L are left, 1000 L are lacking; waiting from 10:33:20 to 19:00:00 is 506 min 40 s
        WorkedPlan plan = new WorkedSeason()
                .waterPoint("well", OptionalDouble.of(2200), WorkHours.ALWAYS, 0)
                .field("A", 15)
                .plan("A");

        assertThat(plan.rig("R1", "draw"))
                .last()
                .asString()
                .startsWith("2 06:0")
                .endsWith("draw well 2000.000 L");
        assertThat(plan.planter("P1", "wait", "fill"))
                .endsWith("1 10:33:20 - 2 07:00:00 wait A water", "2 07:00:00 - 2 07:13:20 fill A");
        assertThat(plan.plan().totals().waitMin()).isEqualTo(30_400 / 60.0, within(0.05));
    }

    @Test
    void aPointOpensAtItsHoursAndTreatsTheWater() {
        // 300 s treatment + 400 s; at A 200 s later, at 07:15:00; batch to 07:30:00
        WorkedPlan plan = new WorkedSeason()
                .waterPoint("well", OptionalDouble.empty(), hours("07:00/21:00"), 300)
                .field("A", 5)
                .plan("A");

        assertThat(plan.rig("R1", "draw")).containsExactly("1 07:00:00 - 1 07:11:40 draw well 2000.000 L");
        assertThat(plan.planter("P1", "wait", "fill"))
                .containsExactly("1 07:20:00 - 1 07:30:00 wait A water", "1 07:30:00 - 1 07:43:20 fill A");
    }

    @Test
    void hookingUpIsPartOfEachDraw() {
        // 240 s to hook up + 400 s
        WorkedPlan plan = new WorkedSeason().hookUp(240).field("A", 5).plan("A");

        assertThat(plan.rig("R1", "draw")).containsExactly("1 06:01:40 - 1 06:12:20 draw well 2000.000 L");
    }

    @Test
    void theHoseIsTakenForHookingUpToo() {
        // the second rig draws when the first has gone: 240 s + 400 s after it began
        WorkedPlan plan = new WorkedSeason()
                .hookUp(240)
                .planter("P2", planter -> planter)
                .rig("R2", rig -> rig)
                .field("A", 5)
                .field("B", 5)
                .plan("A", "B");

        assertThat(plan.rig("R1", "draw")).containsExactly("1 06:01:40 - 1 06:12:20 draw well 2000.000 L");
        assertThat(plan.rig("R2", "draw")).containsExactly("1 06:12:20 - 1 06:23:00 draw well 2000.000 L");
    }

    @Test
    void aNurseTankSmallerThanThePlantersBoundsTheLoad() {
        // 600 L are 3 ha; a trip for each load
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.nurseTank(600))
                .field("A", 6)
                .plan("A");

        assertThat(plan.plan().loads()).extracting(load -> load.litres()).containsExactly(600.0, 600.0);
        assertThat(plan.plan().totals().waterTrips()).isEqualTo(2);
    }

    @Test
    void ofTwoPointsThatServeInTimeTheNearerIsChosen() {
        // yard-pond 1000 m, pond-A 1500 m against 2000 m for the well
        WorkedPlan plan = new WorkedSeason()
                .waterPoint("pond", OptionalDouble.empty(), WorkHours.ALWAYS, 0)
                .road("pond", "A", 1500)
                .field("A", 5)
                .plan("A");

        assertThat(plan.rig("R1", "draw")).containsExactly("1 06:01:40 - 1 06:08:20 draw pond 2000.000 L");
    }
}
