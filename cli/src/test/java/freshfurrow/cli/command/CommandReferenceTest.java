package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** docs/commands.md is made from the commands; {@code -Dcommands=../docs/commands.md} writes it anew. */
final class CommandReferenceTest {
    @Test
    void theDocumentSaysWhatTheCommandsSay() throws Exception {
        String written = System.getProperty("commands", "");
        if (!written.isEmpty()) {
            Files.writeString(Path.of(written), CommandReference.document());
        }

        assertThat(Path.of("../docs/commands.md")).content().isEqualTo(CommandReference.document());
    }
}
