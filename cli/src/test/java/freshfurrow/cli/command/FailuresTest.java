package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class FailuresTest {
    @Test
    void aWrongArgumentIsShownAsItIs() {
        assertThat(Failures.lines(new WrongArgument(List.of("one", "two")))).containsExactly("one", "two");
    }

    @Test
    void anErrorOfTheProgramIsOwnedWithoutATrace() {
        List<String> lines = Failures.lines(new IllegalStateException("a\nb"));
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).startsWith("An error in the program itself").endsWith("a b");
    }
}
