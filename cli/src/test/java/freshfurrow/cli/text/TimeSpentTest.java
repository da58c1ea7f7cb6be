package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class TimeSpentTest {
    /** Working hours are 6 to 12 and 13 to 17. Planting takes 2 h and 1 h, fills 16 and 12 min, moves 18 and 20 min. */
    @Test
    void theWorkingHoursOfAllPlantersAreSummedByWhatTheyWentInto() {
        assertThat(TimeSpent.of(ExampleSeason.season(), ExamplePlan.plan()))
                .containsExactly(
                        new TimeSpent("planting", Duration.ofHours(3)),
                        new TimeSpent("driving", Duration.ofMinutes(38)),
                        new TimeSpent("on fills", Duration.ofMinutes(28)),
                        new TimeSpent("waiting for a rig", Duration.ofMinutes(2)));
    }
}
