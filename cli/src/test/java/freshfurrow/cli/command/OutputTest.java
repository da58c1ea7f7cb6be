package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

final class OutputTest {
    @Test
    void aNameFromAFileCannotSteerTheTerminal() {
        StringWriter written = new StringWriter();
        Output.print(new PrintWriter(written), List.of("field \u001b[2J\nN40 \u009b1m \u202e04N"));
        assertThat(written.toString()).isEqualTo("field ?[2J?N40 ?1m ?04N" + System.lineSeparator());
    }
}
