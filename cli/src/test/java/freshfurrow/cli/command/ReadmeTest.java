package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ReadmeTest {
    private static final Path PROJECT = Path.of("..");

    @Test
    void theTestCommandOfTheReadmeIsWhatContinuousIntegrationRuns() throws IOException {
        List<String> readme = Files.readAllLines(PROJECT.resolve("README.md"));
        assertThat(Files.readAllLines(PROJECT.resolve(".ci").resolve("run"))).contains("mvn -B verify");
        assertThat(readme).contains("mvn -B verify");
    }
}
