package freshfurrow.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class ReadmeTest {
    private static final Path PROJECT = Path.of("..");

    static Stream<String> commands() throws IOException {
        return Files.readAllLines(PROJECT.resolve("README.md")).stream()
                .filter(line -> line.startsWith("./freshfurrow "))
                .map(line -> line.replaceFirst(" +#.*", ""));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandOfTheReadmeExistsWithItsOptions(String command) {
        String[] words = command.substring("./freshfurrow ".length()).split(" +", -1);
        assertThatCode(() -> Freshfurrow.commandLine().parseArgs(words)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everySeasonOfTheReadmeIsThere(String command) {
        assertThat(Stream.of(command.split(" +", -1)).filter(word -> word.matches("scenarios/[^/]*")))
                .allSatisfy(word -> assertThat(PROJECT.resolve(word)).isDirectory());
    }

    @Test
    void theTestCommandOfTheReadmeIsWhatContinuousIntegrationRuns() throws IOException {
        List<String> readme = Files.readAllLines(PROJECT.resolve("README.md"));
        assertThat(Files.readAllLines(PROJECT.resolve(".ci").resolve("run"))).contains("mvn -B verify");
        assertThat(readme).contains("mvn -B verify");
    }

    @Test
    void everyFileThatTheReadmeLinksIsThere() throws IOException {
        String readme = Files.readString(PROJECT.resolve("README.md"));
        List<String> links = Pattern.compile("\\]\\(([^)#:]+)\\)")
                .matcher(readme)
                .results()
                .map(link -> link.group(1))
                .toList();
        assertThat(links).isNotEmpty().allSatisfy(link -> assertThat(PROJECT.resolve(link))
                .exists());
    }
}
