package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FieldReasonsTest {
    @Test
    void fieldsThatAreLateOrLeftHaveAReasonAndOthersHaveNone() {
        Map<String, String> reasons = FieldReasons.of(ExampleSeason.season(), ExamplePlan.plan());
        assertThat(reasons).containsOnlyKeys("S80", "E20");
        assertThat(reasons.get("S80")).startsWith("while its window was open P1 spent 2 h 00 min on other fields");
        assertThat(reasons.get("E20")).isEqualTo("no compost left after 2027-04-21: 4 kg short");
    }
}
