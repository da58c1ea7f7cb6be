package freshfurrow.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table of outside checks names tests that are there. */
class ChecksDocTest {
    private static final Path ROOT = Path.of("..");

    @Test
    void everyRowOfTheDocumentNamesATestThatIsThere() throws IOException {
        List<String> rows = Files.readAllLines(ROOT.resolve("docs").resolve("checks.md")).stream()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| fact"))
                .toList();
        Set<String> tests = tests();

        assertThat(rows).hasSizeGreaterThan(10).allSatisfy(row -> assertThat(namedIn(row))
                .isNotEmpty()
                .allSatisfy(test -> assertThat(tests).contains(test)));
    }

    /** Names in the last column, between backquotes. */
    private static List<String> namedIn(String row) {
        String[] cells = row.split("\\|", -1);
        return Stream.of(cells[cells.length - 2].split(",", -1))
                .map(name -> name.strip().replace("`", ""))
                .toList();
    }

    private static Set<String> tests() throws IOException {
        Set<String> tests = new HashSet<>();
        for (String module : List.of("model", "solver", "cli")) {
            try (Stream<Path> files =
                    Files.walk(ROOT.resolve(module).resolve("src").resolve("test"))) {
                files.map(file -> file.getFileName().toString())
                        .filter(name -> name.endsWith("Test.java") || name.endsWith("IT.java"))
                        .map(name -> name.replace(".java", ""))
                        .forEach(tests::add);
            }
        }
        return tests;
    }
}
