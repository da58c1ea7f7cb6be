package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.WorkHours;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TimeUseTest {
    private static final WorkHours HOURS = new WorkHours(List.of(new DaySpan(8 * 3600, 18 * 3600)));

    @Test
    void aWaitOverANightAndASundayCountsItsWorkingHoursOnly() {
        // Saturday 16:00 to 18:00 and Monday 8:00 to 9:00: three hours of the 41 on the clock
        Activity wait = new Activity.Wait(
                LocalDateTime.parse("2027-05-01T16:00:00"),
                LocalDateTime.parse("2027-05-03T09:00:00"),
                "A",
                WaitReason.RIG);
        Plan.PlanterPlan planter = new Plan.PlanterPlan(1000, List.of("A"), List.of(), List.of(wait));

        TimeUse use = TimeUse.of(
                planter,
                "A",
                new DateWindow(LocalDate.parse("2027-04-20"), LocalDate.parse("2027-05-10")),
                HOURS,
                new ClosedDays(Set.of(DayOfWeek.SUNDAY), Set.of()));

        assertThat(use.parts()).containsExactly(new TimeUse.Part("waiting for a rig", Duration.ofHours(3)));
    }
}
