package freshfurrow.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TemplateTest {
    @Test
    void whatFillsAGapIsTakenAsItIs() {
        assertThat(Template.fill("<[[a]]|[[b]]|[[a]]>", Map.of("a", "[[b]] $1 \\", "b", "x")))
                .isEqualTo("<[[b]] $1 \\|x|[[b]] $1 \\>");
    }

    @Test
    void aGapWithNothingForItIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Template.fill("[[a]]", Map.of()))
                .withMessageContaining("[[a]]");
    }
}
