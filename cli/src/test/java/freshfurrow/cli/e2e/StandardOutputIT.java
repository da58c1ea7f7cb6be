package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class StandardOutputIT {
    /** Takes nothing, as a disk does that is full. */
    private static final Path FULL = Path.of("/dev/full");

    private Path folder = Path.of("");

    @BeforeAll
    void plan(@TempDir Path temporary) throws Exception {
        assumeTrue(Files.exists(FULL), "there is no " + FULL);
        folder = temporary;
        for (String scenario : List.of("first-season", "weather-spring")) {
            Path copy = Files.createDirectory(folder.resolve(scenario));
            try (Stream<Path> files =
                    Files.list(Launcher.projectFolder().resolve("scenarios").resolve(scenario))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Files.copy(file, copy.resolve(file.getFileName()));
                }
            }
        }
        assertThat(InProcess.run("plan", folder.resolve("first-season").toString(), "--steps", "0")
                        .exitCode())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "--version",
                "plan --help",
                "check first-season",
                "weather weather-spring",
                "plan first-season --steps 0 --out other",
                "seasons first-season --steps 0",
                "replan first-season --plan first-season/plan --now 2027-04-23T12:00 --steps 0 --out other2",
                "day first-season/plan 2027-04-22",
                "page first-season/plan --out page.html",
                "sheets first-season/plan --out sheets.html",
                "export first-season/plan --out exported",
                "why first-season/plan W95",
                "audit first-season first-season/plan",
                "log first-season",
                "trace first-season --field N80",
                "compare weather-spring --springs 1 --steps 0 --out compared",
                "supply weather-spring --springs 1-3 --steps 0",
                "mix first-season",
                "calibrate first-season --planter P1",
                "completion"
            })
    void whatCannotBePrintedIsToldByExitCodeAndOneLine(String arguments) throws Exception {
        Launcher.Result full = toFullDisk(arguments);
        assertThat(full.exitCode()).as(full.err()).isEqualTo(1);
        assertThat(full.err())
                .isEqualTo("Standard output was closed or is full, so some of this could not be printed;"
                        + " any files have been written.\n");
    }

    @Test
    void thePlanIsWrittenAllTheSame() throws Exception {
        assertThat(toFullDisk("plan first-season --steps 0 --out kept").exitCode())
                .isEqualTo(1);
        assertThat(folder.resolve("kept").resolve("plan.json")).isRegularFile();
        assertThat(folder.resolve("kept").resolve("plan.html")).isRegularFile();
    }

    private Launcher.Result toFullDisk(String arguments) throws Exception {
        return Launcher.result(Launcher.start(
                folder, Map.of(), List.of("sh", "-c", Launcher.path() + " " + arguments + " > " + FULL)));
    }
}
