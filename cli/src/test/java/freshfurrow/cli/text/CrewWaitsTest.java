package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.WaitReason;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

final class CrewWaitsTest {
    private static final LocalDate THURSDAY = LocalDate.of(2027, 4, 22);

    @Test
    void aWaitWithinTheDaySaysForWhatAndHasNoBoxToTick() {
        assertThat(steps(THURSDAY, plant("22T08:00"), wait("22T10:00", "22T10:20", WaitReason.RIG), fill("22T10:20")))
                .contains("    10:00  wait      at E60 for the rig");
    }

    @Test
    void aPauseOutsideWorkingHoursIsABreakAndSaysWhatComesNext() {
        assertThat(steps(THURSDAY, plant("22T08:00"), wait("22T11:45", "22T12:30", WaitReason.HOURS), fill("22T12:30")))
                .contains("    11:45  break     at E60; next fill about 12:30");
    }

    @Test
    void theLastWaitOfADayIsItsEndAndSaysWhenWorkGoesOn() {
        assertThat(steps(THURSDAY, plant("22T18:00"), wait("22T19:59", "23T07:00", WaitReason.RIG), fill("23T07:00")))
                .contains("    20:00  DONE FOR THE DAY. Park at E60; next fill about 07:00 on Fri 23 Apr");
    }

    @Test
    void theWorkThatComesNextIsTheOneAfterAllWaits() {
        assertThat(steps(
                        THURSDAY,
                        plant("22T18:00"),
                        wait("22T19:59", "23T07:00", WaitReason.HOURS),
                        wait("23T07:00", "23T07:30", WaitReason.RIG),
                        fill("23T07:30")))
                .contains("    20:00  DONE FOR THE DAY. Park at E60; next fill about 07:30 on Fri 23 Apr");
    }

    @Test
    void aMachineThatStandsForDaysIsParkedSinceTheFirstOfThem() {
        Activity[] work = {plant("19T07:00"), wait("19T09:18", "22T07:00", WaitReason.WINDOW), fill("22T07:00")};
        assertThat(steps(THURSDAY.minusDays(1), work))
                .contains(
                        "           PARKED    at E60 since Mon 19 Apr; next fill about 07:00 on Thu 22 Apr, once the planting window is open");
        assertThat(steps(THURSDAY, work))
                .contains(
                        "           PARKED    at E60 since Mon 19 Apr; next fill about 07:00, once the planting window is open");
    }

    @Test
    void aMachineThatHasNotWorkedOnTheDayIsParkedAndNotDone() {
        assertThat(steps(THURSDAY, wait("22T06:00", "23T07:00", WaitReason.WET), fill("23T07:00")))
                .contains("           PARKED    at E60; next fill about 07:00 on Fri 23 Apr, once it is dry enough");
    }

    @Test
    void aShortWaitOverMidnightIsNoEndOfTheDay() {
        assertThat(steps(THURSDAY, plant("22T21:00"), wait("22T23:50", "23T00:10", WaitReason.RIG), fill("23T00:10")))
                .contains("    23:50  wait      at E60 for the rig (until about 00:10 on Fri 23 Apr)");
    }

    @Test
    void afterTheLastWorkNothingComesNext() {
        assertThat(steps(THURSDAY, plant("22T18:00"), wait("22T20:00", "23T07:00", WaitReason.HOURS)))
                .contains("    20:00  DONE FOR THE DAY. Park at E60");
    }

    @Test
    void aWaitThatIsOverInNoTimeIsNotTold() {
        assertThat(String.join(
                        "\n",
                        steps(
                                THURSDAY,
                                plant("22T08:00"),
                                wait("22T10:00:10", "22T10:02:20", WaitReason.RIG),
                                fill("22T10:02:20"))))
                .doesNotContain("wait");
    }

    /** The lines of P1 on a sheet of the day. */
    private static List<String> steps(LocalDate date, Activity... activities) {
        return DaySheet.lines(ExamplePlan.withActivities(List.of(activities)), date);
    }

    private static Activity.Wait wait(String start, String end, WaitReason why) {
        return new Activity.Wait(at(start), at(end), "E60", why);
    }

    private static Activity plant(String start) {
        return new Activity.Plant(at(start), at(start).plusHours(1), "E60", "L0001", 4);
    }

    private static Activity fill(String start) {
        return new Activity.Fill(at(start), at(start).plusMinutes(16), "E60", "L0001");
    }

    private static LocalDateTime at(String dayAndTime) {
        return LocalDateTime.parse("2027-04-" + dayAndTime);
    }
}
