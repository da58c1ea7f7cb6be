package freshfurrow.model.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.FieldGround;
import org.junit.jupiter.api.Test;

/** A moderately drained field stays closed a tenth of a day per mm, a poorly drained one a day, a well drained one none. */
class RainTest {
    @Test
    void rainInMidFieldStopsThePlanterUntilTheFieldHasDried() {
        // 2800 s from 07:33:20 to the rain: 2.8 ha; closed for 10 mm x 0.1 = 1 day; 2.2 ha the next morning
        WorkedPlan plan = new WorkedSeason()
                .hold(25 * 3600)
                .rain(1, "08:20", 10)
                .field("A", 5)
                .plan("A");

        assertThat(plan.planter("P1", "plant"))
                .containsExactly(
                        "1 07:33:20 - 1 08:20:00 plant A 2.800 ha", "2 07:00:00 - 2 07:36:40 plant A 2.200 ha");
    }

    @Test
    void aLoadIsNoLargerThanWhatGoesIntoTheGroundBeforeTheRain() {
        // 3600 s: 300 + 0.11 x = 3600 gives 30,000 m2 = 600 L
        WorkedPlan plan = new WorkedSeason().rain(1, "08:20", 10).field("A", 5).plan("A");

        assertThat(plan.load(1).litres()).isBetween(595.0, 600.0);
        assertThat(plan.fillStarts("P1")).containsExactly("1 07:20:00", "2 07:00:00");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void aClosureOfWholeDaysIsNotLengthenedByRounding() {
        // 30 mm x 0.1 days per mm is 3.0000000000000004 in doubles, and 3 days on the farm
        WorkedPlan plan =
                new WorkedSeason().days(5).rain(1, "00:00", 30).field("A", 5).plan("A");

        assertThat(plan.planter("P1", "move")).containsExactly("4 07:00:00 - 4 07:20:00 move yard to A");
        assertThat(plan.planter("P1", "wait")).first().asString().isEqualTo("1 07:00:00 - 4 07:00:00 wait yard wet");
        assertThat(plan.fillStarts("P1")).containsExactly("4 07:20:00");
        assertThat(plan.plan().totals().waitMin()).isZero();
    }

    @Test
    void aStartedDayOfDryingCountsWhole() {
        // 21 mm x 0.1 = 2.1 days: closed on days 1 to 3
        WorkedPlan plan =
                new WorkedSeason().days(5).rain(1, "00:00", 21).field("A", 5).plan("A");

        assertThat(plan.fillStarts("P1")).containsExactly("4 07:20:00");
    }

    @Test
    void noMachineDrivesToAFieldThatIsTooWetWhenItArrives() {
        // closed on days 1 to 3; the rig has its own hours from 06:00 on, 300 s from the well to the field
        WorkedPlan plan =
                new WorkedSeason().days(5).rain(1, "00:00", 30).field("A", 5).plan("A");

        assertThat(plan.rig("R1", "move"))
                .containsExactly("4 06:00:00 - 4 06:01:40 move yard to well", "4 06:08:20 - 4 06:11:40 move well to A");
    }

    @Test
    void closuresOfTwoRainsAreJoined() {
        // day 1 noon for 1 day, day 2 05:00 for 2 days: closed until day 4
        WorkedPlan plan = new WorkedSeason()
                .days(5)
                .hold(100 * 3600)
                .rain(1, "08:20", 10)
                .rain(2, "05:00", 20)
                .field("A", 5)
                .plan("A");

        assertThat(plan.planter("P1", "plant"))
                .containsExactly(
                        "1 07:33:20 - 1 08:20:00 plant A 2.800 ha", "4 07:00:00 - 4 07:36:40 plant A 2.200 ha");
    }

    @Test
    void aDayOnWhichTheRecordHasWetGroundIsClosedWholeForThatDrainageClassAlone() {
        WorkedPlan plan = new WorkedSeason()
                .days(4)
                .wetGround(1)
                .wetGround(2)
                .field("A", 5, field -> field.drainage(Drainage.POOR))
                .plan("A");
        WorkedPlan drained = new WorkedSeason().wetGround(1).field("A", 5).plan("A");

        assertThat(plan.fillStarts("P1")).containsExactly("3 07:20:00");
        assertThat(drained.fillStarts("P1")).containsExactly("1 07:20:00");
        assertThat(WetGround.of(plan.season(), FieldGround.of(Drainage.POOR)))
                .containsExactly(new WetGround(
                        WorkedSeason.day(1).atStartOfDay(), WorkedSeason.day(3).atStartOfDay()));
    }

    @Test
    void rainThatPeopleTellOfClosesFieldsBesideTheRecord() {
        // the record closes day 1; 10 mm on day 2 x 1 day per mm close the rest
        WorkedPlan plan = new WorkedSeason()
                .days(4)
                .wetGround(1)
                .rain(2, "00:00", 10)
                .field("A", 5, field -> field.drainage(Drainage.POOR))
                .plan("A");

        assertThat(plan.unserved()).containsExactly("A 5.000 ha");
    }

    @Test
    void aFieldThatDoesNotDryInTheSeasonIsSkipped() {
        WorkedPlan plan = new WorkedSeason()
                .rain(1, "00:00", 10)
                .field("A", 5, field -> field.drainage(Drainage.WELL))
                .field("B", 5, field -> field.drainage(Drainage.POOR))
                .plan("B A");

        assertThat(plan.planter("P1"))
                .containsExactly(
                        "1 07:00:00 - 1 07:20:00 move yard to A",
                        "1 07:20:00 - 1 07:33:20 fill A",
                        "1 07:33:20 - 1 08:56:40 plant A 5.000 ha");
        assertThat(plan.unserved()).containsExactly("B 5.000 ha");
        assertThat(plan.plan().unserved().get(0).why()).isNotBlank();
    }
}
