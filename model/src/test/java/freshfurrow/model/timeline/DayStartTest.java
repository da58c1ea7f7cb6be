package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.WorkHours;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DayStartTest {
    @Test
    void aRigThatStartsEarlierHasTheFirstLoadReadyWhenPlantingMayStart() {
        // the first load ends with the day at 08:56:40
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/08:56:40"))
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1", "extract")).last().isEqualTo("2 06:45:00 - 2 07:00:00 extract A");
        assertThat(plan.planter("P1", "fill")).last().isEqualTo("2 07:00:00 - 2 07:13:20 fill A");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void aRigThatStartsWithThePlanterKeepsItWaitingForTheFirstBatch() {
        // day 1: the rig is at A at 07:11:40, its batch ends at 07:26:40, the load is used up at 09:03:20
        // day 2: batch from 07:00:00 to 07:15:00
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/09:03:20"))
                .rig("R1", rig -> rig.hours("07:00/20:00"))
                .field("A", 10)
                .plan("A");

        assertThat(plan.planter("P1", "wait", "fill"))
                .contains("1 07:26:40 - 1 07:40:00 fill A")
                .endsWith("2 07:00:00 - 2 07:15:00 wait A rig", "2 07:15:00 - 2 07:28:20 fill A");
        assertThat(plan.plan().totals().waitMin()).isEqualTo((400 + 900) / 60.0, within(0.05));
    }

    @Test
    void aLongHoldTimeLetsTheBatchBeMadeTheEveningBefore() {
        // the rig works until 20:00:00, so that is the last instant before 07:00:00 at which a batch can end
        WorkedPlan plan = new WorkedSeason()
                .hold(20 * 3600)
                .planter("P1", planter -> planter.hours("07:00/09:03:20"))
                .rig("R1", rig -> rig.hours("07:00/20:00"))
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1", "extract")).last().isEqualTo("1 19:45:00 - 1 20:00:00 extract A");
        assertThat(plan.planter("P1", "fill")).last().isEqualTo("2 07:00:00 - 2 07:13:20 fill A");
        assertThat(plan.loads()).last().isEqualTo("P1 R1 1000.000 L, old 2 16:00:00, used up 2 08:36:40");
    }

    @Test
    void batchesThatWouldBeTooOldFromTheEveningBeforeAreAllMadeInTheMorning() {
        // 5 batches of 10 kg take 5 x 900 + 4 x 180 s = 1:27:00. Day 1: from 06:11:40 to 07:38:40, used up 09:15:20.
        // Day 2: before 07:00:00 there is 1 h only, and a batch of the evening before is 11 h old: from 06:00:00 to
        // 07:27:00
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/09:15:20"))
                .rig("R1", rig -> rig.batchCompost(10))
                .field("A", 10)
                .plan("A");

        assertThat(plan.planter("P1", "wait", "fill"))
                .contains("1 07:38:40 - 1 07:52:00 fill A")
                .endsWith("2 07:00:00 - 2 07:27:00 wait A rig", "2 07:27:00 - 2 07:40:20 fill A");
        assertThat(plan.loads()).last().isEqualTo("P1 R1 1000.000 L, old 2 11:15:00, used up 2 09:03:40");
    }

    @Test
    void waterIsDrawnTheEveningBeforeAsLateAsItFitsWherePlantingWouldStartLaterOtherwise() {
        // The rig works from 07:00 to 20:00 too. In one piece before 20:00: 200 s to the well, 386 s there, 200 s back,
        // and the batch
        // of 900 s, which is made in the morning after all, as it would be too old.
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/10:33:20"))
                .rig("R1", rig -> rig.hours("07:00/20:00"))
                .field("A", 15)
                .plan("A");

        assertThat(plan.rig("R1", "draw")).last().isEqualTo("1 19:35:14 - 1 19:41:40 draw well 1926.297 L");
        assertThat(plan.fillStarts("P1")).element(2).isEqualTo("2 07:15:00");
    }

    @Test
    void waterIsDrawnInTheMorningWhereThatIsSoonEnough() {
        // 200 s to the well, 400 s there, 200 s back, and 900 s for the batch from 06:00 on
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/10:33:20"))
                .field("A", 15)
                .plan("A");

        assertThat(plan.rig("R1", "draw"))
                .containsExactly(
                        "1 06:01:40 - 1 06:08:20 draw well 2000.000 L", "2 06:03:20 - 2 06:10:00 draw well 2000.000 L");
        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "1 08:56:40", "2 07:00:00");
    }

    @Test
    void waterOfThePointThatIsBestInTheEveningIsDrawnInTheMorning() {
        // At 19:48:00 the rig has filled the planter and is clean. Water and 1,000 L of it there take 200 + 500 s at
        // the well and
        // 300 + 200 s at the pond, and it is at A again at 06:03:20 or 06:05:00. From 06:00:00 on the pond is the
        // sooner one, by
        // 100 s. But what is mixed there is as much longer on the road, so that it is the well all the same: in the
        // morning, as
        // planting goes on in the evening only.
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("19:11:40/21:08:20"))
                .rig("R1", rig -> rig.atTheWater())
                .waterPoint("well", OptionalDouble.empty(), WorkHours.ALWAYS, 300)
                .waterPoint("pond", OptionalDouble.empty(), WorkHours.ALWAYS, 0)
                .road("pond", "A", 3000)
                .field("A", 10)
                .plan("A");

        assertThat(plan.rig("R1", "draw"))
                .containsExactly(
                        "1 06:01:40 - 1 06:05:00 draw pond 1000.000 L", "2 06:03:20 - 2 06:11:40 draw well 1000.000 L");
        assertThat(plan.rig("R1", "extract")).last().isEqualTo("2 18:53:20 - 2 19:08:20 extract well");
        assertThat(plan.fillStarts("P1")).containsExactly("1 19:31:40", "2 19:11:40");
    }

    @Test
    void aPlanterComesToAFieldOnItsLastWorkingDayBeforeTheWindowOpens() {
        WorkedPlan plan =
                new WorkedSeason().field("A", 5, field -> field.window(3, 3)).plan("A");

        assertThat(plan.planter("P1", "move")).containsExactly("2 07:00:00 - 2 07:20:00 move yard to A");
        assertThat(plan.planter("P1", "wait"))
                .containsExactly("1 07:00:00 - 2 07:00:00 wait yard window", "2 07:20:00 - 3 07:00:00 wait A window");
        assertThat(plan.planter("P1", "fill")).containsExactly("3 07:00:00 - 3 07:13:20 fill A");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void nobodyWorksOnAClosedDay() {
        // day 1 ends with the second load; the nurse tank is empty and refilled the same day; day 2 is closed
        WorkedPlan plan = new WorkedSeason()
                .closed(2)
                .planter("P1", planter -> planter.hours("07:00/10:33:20"))
                .field("A", 15)
                .plan("A");

        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "1 08:56:40", "3 07:00:00");
        assertThat(plan.rig("R1"))
                .noneMatch(line -> line.startsWith("2 "))
                .contains("3 06:45:00 - 3 07:00:00 extract A");
    }
}
