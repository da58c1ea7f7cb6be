package freshfurrow.solver.why;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.WorkHours;
import java.util.List;
import org.junit.jupiter.api.Test;

class LongerHoursTest {
    private static final WorkHours DAY = hours(7 * 3600, 12 * 3600, 13 * 3600, 22 * 3600);

    @Test
    void theEveningIsLonger() {
        assertThat(LongerHours.of(DAY, 90)).isEqualTo(hours(7 * 3600, 12 * 3600, 13 * 3600, 23 * 3600 + 1800));
    }

    @Test
    void whatIsPastMidnightIsWorkedInTheMorning() {
        assertThat(LongerHours.of(DAY, 180)).isEqualTo(hours(6 * 3600, 12 * 3600, 13 * 3600, 24 * 3600));
    }

    @Test
    void aDayIsLongerByItsNightAtMost() {
        // 2 h after 22:00 and 7 h before 07:00
        assertThat(LongerHours.most(DAY)).isEqualTo(9 * 60);
        assertThat(LongerHours.of(DAY, 9 * 60)).isEqualTo(hours(0, 12 * 3600, 13 * 3600, 24 * 3600));
        assertThat(LongerHours.most(WorkHours.ALWAYS)).isZero();
    }

    private static WorkHours hours(int from, int noon, int after, int to) {
        return new WorkHours(List.of(new DaySpan(from, noon), new DaySpan(after, to)));
    }
}
