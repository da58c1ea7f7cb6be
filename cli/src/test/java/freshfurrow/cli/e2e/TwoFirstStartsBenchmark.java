package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two first starts at once in a copy of the sources, with Maven. It takes one to some minutes, so that its name keeps it out of the
 * tests: {@code mvn -B verify -Dit.test=TwoFirstStartsBenchmark -Dfailsafe.failIfNoSpecifiedTests=false}.
 */
final class TwoFirstStartsBenchmark {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void bothRunAndTheyBuildOnce() throws Exception {
        for (String name : List.of("freshfurrow", "pom.xml", "launcher", "model", "solver", "cli", "scenarios")) {
            copy(Launcher.projectFolder().resolve(name), folder.resolve(name));
        }
        long begunNs = System.nanoTime();
        List<String> command = List.of(folder.resolve("freshfurrow").toString(), "--version");
        Process one = Launcher.start(folder, Map.of(), command);
        Process other = Launcher.start(folder, Map.of(), command);

        String said = "";
        for (Process start : List.of(one, other)) {
            said += new String(start.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(start.waitFor()).as(said).isZero();
        }

        assertThat(said).containsOnlyOnce("Building freshfurrow").containsOnlyOnce("Another start is building");
        System.out.printf(Locale.ROOT, "two first starts: %.0f s%n", (System.nanoTime() - begunNs) / 1e9);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path :
                    all.filter(path -> !path.toString().contains("/target")).toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        }
    }
}
