package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.progress.News;
import freshfurrow.model.season.Outage;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Without setting up, R1 stands at A with water at 06:11:40, and its batch of 5 ha takes 900 s. */
class SetUpAndCloseUpTest {
    @Test
    void aRigIsSetUpBeforeItsFirstWorkOfADayAndClosedUpAfterItsLast() {
        // set up from 06:00:00 to 07:00:00, drive 100 s, draw 400 s, drive 200 s, batch 900 s: 07:26:40
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.setUp(3600).closeUp(1200))
                .field("A", 5)
                .plan("A");

        assertThat(plan.rig("R1"))
                .containsExactly(
                        "1 06:00:00 - 1 07:00:00 setUp yard",
                        "1 07:00:00 - 1 07:01:40 move yard to well",
                        "1 07:01:40 - 1 07:08:20 draw well 2000.000 L",
                        "1 07:08:20 - 1 07:11:40 move well to A",
                        "1 07:11:40 - 1 07:26:40 extract A",
                        "1 07:26:40 - 1 07:40:00 transfer A 1000.000 L",
                        "1 07:40:00 - 1 07:43:00 clean A",
                        "1 07:43:00 - 1 08:03:00 closeUp A");
    }

    @Test
    void aRigThatWorksLaterInTheDayIsSetUpLaterToo() {
        // the planter is at A at 07:20:00; the rig leaves the yard at once when its hours begin, 600 s after they do
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.setUp(600))
                .field("A", 5, field -> field.window(2, 3))
                .plan("A");

        assertThat(plan.rig("R1", "setUp", "closeUp")).containsExactly("2 06:00:00 - 2 06:10:00 setUp yard");
    }

    @Test
    void eachDayBeginsWithSettingUpAndEndsWithClosingUp() {
        // from 07:20:00 to 08:40:00 a load of 4.091 ha is transferred in 709 s and planted in 4,091 s. That for the
        // rest,
        // 3.909 ha, is asked for at 07:00:00; its batch takes 704 s before, rounded up
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("07:00/08:40"))
                .rig("R1", rig -> rig.setUp(600).closeUp(300))
                .field("A", 8)
                .plan("A");

        assertThat(plan.rig("R1", "setUp"))
                .containsExactly("1 06:00:00 - 1 06:10:00 setUp yard", "2 06:38:15 - 2 06:48:15 setUp A");
        assertThat(plan.rig("R1", "closeUp")).hasSize(2);
    }

    @Test
    void theLastWorkOfADayLeavesTimeToCloseUp() {
        // hours to 07:45:00: transfer from 07:20:00 to 07:33:20 and clean to 07:36:20 leave 520 s
        assertThat(oneLoad()
                        .rig("R1", rig -> rig.hours("06:00/07:45").closeUp(520))
                        .plan("A")
                        .rig("R1", "transfer", "closeUp"))
                .containsExactly("1 07:20:00 - 1 07:33:20 transfer A 1000.000 L", "1 07:36:20 - 1 07:45:00 closeUp A");
    }

    @Test
    void aCleanThatLeavesNoTimeToCloseUpWaitsForTheNextDay() {
        assertThat(oneLoad()
                        .rig("R1", rig -> rig.hours("06:00/07:45").setUp(60).closeUp(521))
                        .plan("A")
                        .rig("R1", "transfer", "closeUp", "clean", "setUp"))
                .containsExactly(
                        "1 06:00:00 - 1 06:01:00 setUp yard",
                        "1 07:20:00 - 1 07:33:20 transfer A 1000.000 L",
                        "1 07:33:20 - 1 07:42:01 closeUp A",
                        "2 06:00:00 - 2 06:01:00 setUp A",
                        "2 06:01:00 - 2 06:04:00 clean A",
                        "2 06:04:00 - 2 06:12:41 closeUp A");
    }

    @Test
    void hoursThatGoOnPastMidnightAreOneDay() {
        // 20:00 to 04:00; a load every 300 + 500 + 5,000 s. What is left of the day before is a day too
        WorkedPlan plan = new WorkedSeason()
                .planter("P1", planter -> planter.hours("00:00/04:00", "20:00/24:00"))
                .rig("R1", rig -> rig.hours("00:00/04:00", "20:00/24:00")
                        .setUp(600)
                        .closeUp(300))
                .field("A", 30)
                .plan("A");

        assertThat(plan.rig("R1", "setUp", "transfer", "closeUp"))
                .containsExactly(
                        "1 00:00:00 - 1 00:10:00 setUp yard",
                        "1 00:36:40 - 1 00:50:00 transfer A 1000.000 L",
                        "1 02:13:20 - 1 02:26:40 transfer A 1000.000 L",
                        "1 02:43:00 - 1 02:48:00 closeUp A",
                        "1 20:00:00 - 1 20:10:00 setUp A",
                        "1 20:25:00 - 1 20:38:20 transfer A 1000.000 L",
                        "1 22:01:40 - 1 22:15:00 transfer A 1000.000 L",
                        "1 23:38:20 - 1 23:51:40 transfer A 1000.000 L",
                        "2 01:15:00 - 2 01:28:20 transfer A 1000.000 L",
                        "2 01:31:20 - 2 01:36:20 closeUp A");
    }

    @Test
    void aBreakIsNotTheEndOfADay() {
        // the drive from the well, 200 s, does not fit from 07:08:20 to the break at 07:10:00; nothing is set up after
        // that
        WorkedPlan plan = new WorkedSeason()
                .rig("R1", rig -> rig.hours("06:00/07:10", "07:30/20:00")
                        .setUp(3600)
                        .closeUp(300))
                .field("A", 5)
                .plan("A");

        assertThat(plan.rig("R1", "setUp", "extract", "closeUp"))
                .containsExactly(
                        "1 06:00:00 - 1 07:00:00 setUp yard",
                        "1 07:33:20 - 1 07:48:20 extract A",
                        "1 08:04:40 - 1 08:09:40 closeUp A");
    }

    @Test
    void aRigThatIsSetUpWhenThePlanIsMadeAnewIsNotSetUpAgain() {
        WorkedPlan before = new WorkedSeason()
                .rig("R1", rig -> rig.setUp(600).closeUp(300))
                .field("A", 5)
                .field("B", 5)
                .plan("A B");
        UnderWay underWay = UnderWay.at(before, "08:00:00");

        assertThat(underWay.start().standing().rigs().get("R1").setUpAt()).contains(WorkedSeason.FIRST.atTime(6, 0));
        assertThat(underWay.goOn().rig("R1", "setUp", "closeUp")).hasSize(1).allMatch(line -> line.contains("closeUp"));
    }

    @Test
    void aRigThatIsSetUpAndHasNoMoreWorkIsClosedUp() {
        WorkedPlan before = new WorkedSeason()
                .rig("R1", rig -> rig.setUp(600).closeUp(300))
                .field("A", 5)
                .field("B", 5)
                .plan("A B");

        assertThat(UnderWay.at(before, "08:00:00").goOnWith("").rig("R1"))
                .containsExactly("1 08:00:00 - 1 08:05:00 closeUp A");
    }

    @Test
    void aRigThatIsClosedUpAndHasMoreWorkIsSetUpAgain() {
        // the only load is transferred from 07:20:00 to 07:33:20, the rig cleaned and closed up by 07:41:20
        WorkedPlan before = new WorkedSeason()
                .rig("R1", rig -> rig.setUp(600).closeUp(300))
                .field("A", 5)
                .field("B", 5)
                .plan("A");

        assertThat(UnderWay.at(before, "10:00:00").goOnWith("B").rig("R1", "setUp", "closeUp"))
                .first()
                .isEqualTo("1 10:00:00 - 1 10:10:00 setUp A");
    }

    @Test
    void aRigThatWasNotClosedUpOnTheDayBeforeIsSetUpAgain() {
        // it is down from 08:00:00 on to the next morning
        WorkedPlan before = new WorkedSeason()
                .rig("R1", rig -> rig.setUp(600).closeUp(300))
                .field("A", 5)
                .field("B", 5)
                .plan("A B");
        LocalDateTime eight = WorkedSeason.FIRST.atTime(8, 0);
        News down = new News(List.of(), List.of(new Outage("R1", eight, eight.plusHours(23))), Set.of());

        assertThat(UnderWay.at(before, "08:30:00", down).goOn().rig("R1", "setUp", "closeUp"))
                .startsWith("2 07:00:00 - 2 07:10:00 setUp A");
    }

    private static WorkedSeason oneLoad() {
        return new WorkedSeason().field("A", 5);
    }
}
