package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class WorkingTimeTest {
    /** Working hours are 6 to 12 and 13 to 17. Planting takes 2 h and 1 h, fills 16 and 12 min, moves 18 and 20 min. */
    @Test
    void theWorkingHoursOfAllPlantersAreSummedByWhatTheyWentInto() {
        assertThat(WorkingTime.of(ExampleSeason.season(), ExamplePlan.plan()))
                .containsExactly(
                        new WorkingTime("planting", Duration.ofHours(3)),
                        new WorkingTime("driving", Duration.ofMinutes(38)),
                        new WorkingTime("on fills", Duration.ofMinutes(28)),
                        new WorkingTime("waiting for a rig", Duration.ofMinutes(2)));
    }
}
