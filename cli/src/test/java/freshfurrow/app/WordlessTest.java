package freshfurrow.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What an option or a button is called is for commands and pages to say. */
final class WordlessTest {
    private static final Path SOURCES = Path.of("src", "main", "java", "freshfurrow", "app");
    private static final Pattern OPTION = Pattern.compile("\"[^\"]*--[a-z]");

    @Test
    void theApplicationLayerNamesNoOption() throws IOException {
        try (var files = Files.walk(SOURCES)) {
            List<Path> sources =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            assertThat(sources).hasSizeGreaterThan(50);
            for (Path source : sources) {
                assertThat(Files.readString(source)).as(source.toString()).doesNotContainPattern(OPTION);
            }
        }
    }
}
