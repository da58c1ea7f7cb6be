package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.quantity.DisplayUnits;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ProgressTextTest {
    private static final ProgressText TEXT = new ProgressText(DisplayUnits.US);

    @Test
    void tellsTimeLeftFillsLateAndUnplantedArea() {
        assertThat(TEXT.line(Optional.of(Duration.ofSeconds(75)), 96, 40.468564224, 0))
                .isEqualTo("planning, 1:15 left: 96 fills, 100 ac-days late, 0.0 ac unplanted");
    }

    @Test
    void tellsNoTimeWherePlanningEndsByItsSteps() {
        assertThat(TEXT.line(Optional.empty(), 1, 0, 0)).startsWith("planning: 1 fills");
    }
}
