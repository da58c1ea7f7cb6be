package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RuleDocsTest {
    private static final Path DOCS = Path.of("..", "docs", "developing", "audit.md");

    @ParameterizedTest
    @EnumSource
    void theDocumentListsEveryRuleWithItsSentence(Rule rule) throws IOException {
        assertThat(Files.readString(DOCS)).contains("| `" + rule + "` | " + rule.sentence() + " |");
    }
}
