package freshfurrow.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ChecksDocumentTest {
    private static final Path ROOT = Path.of("..");

    @Test
    void everyTestThatTheListOfOutsideChecksNamesExists() throws IOException {
        Set<String> named = Pattern.compile("`(\\w+Test)`")
                .matcher(Files.readString(ROOT.resolve("docs/developing/checks.md")))
                .results()
                .map((MatchResult result) -> result.group(1) + ".java")
                .collect(Collectors.toSet());
        try (Stream<Path> files = Files.walk(ROOT)) {
            Set<String> present = files.map(path -> String.valueOf(path.getFileName()))
                    .filter(name -> name.endsWith("Test.java"))
                    .collect(Collectors.toSet());

            assertThat(named).hasSizeGreaterThan(10);
            assertThat(present).containsAll(named);
        }
    }
}
