package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** The job files of docs/developing/scaling.md as Slurm runs them: only how much is compared is less. */
@Isolated("it waits for jobs, and a machine that is full of other tests keeps those waiting")
final class SlurmIT {
    private static final Path JOB_FILES = Launcher.projectFolder().resolve("docs/developing/scaling");
    private static final int SPRINGS = 6;
    private static final Map<String, String> LESS_WORK = Map.of(
            "springs=10000\n", "springs=" + SPRINGS + "\n",
            "slices=40\n", "slices=3\n",
            " --variant two-rigs.yaml --replan 7 --steps 20000 ", " --steps 0 ");
    private static final long LONGEST_MS = 300_000;
    private static final long BETWEEN_LOOKS_MS = 20;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void aKilledSliceRunsAgainAndTheSlicesMakeTheFileOfOneRun() throws Exception {
        try (OneMachineSlurm slurm = OneMachineSlurm.start()) {
            Path season = seasonWithJobFiles(slurm.folder().resolve("season"));
            String slices = submit(slurm, season);

            kill(season, "slices/3-4");
            awaitEnd(slurm, season);

            assertThat(slurm.run(season, "scontrol", "show", "job", slices + "_1"))
                    .contains("Restarts=1 ", "JobState=COMPLETED");
            assertThat(Files.readString(season.resolve("compare/compare.json"))).isEqualTo(ofOneRun());

            Map<String, FileTime> before = slicesOf(season);
            Files.delete(season.resolve("slices/1-2/compare.json"));
            Files.delete(season.resolve("slices/1-2/compare.html"));
            submit(slurm, season);
            awaitEnd(slurm, season);

            assertThat(slicesOf(season)).containsOnlyKeys(before.keySet());
            assertThat(slicesOf(season).entrySet().stream()
                            .filter(slice -> !slice.getValue().equals(before.get(slice.getKey()))))
                    .extracting(Map.Entry::getKey)
                    .containsExactly("1-2");
            assertThat(Files.readString(season.resolve("slice-2.log"))).endsWith("slices/5-6 is there already\n");
            assertThat(Files.readString(season.resolve("compare/compare.json"))).isEqualTo(ofOneRun());
        }
    }

    private static String submit(OneMachineSlurm slurm, Path season) throws Exception {
        String slices = slurm.run(season, "sbatch", "--parsable", "--array=0-2", "--cpus-per-task=1", "slices.sbatch");
        slurm.run(season, "sbatch", "--dependency=afterok:" + slices, "--kill-on-invalid-dep=yes", "merge.sbatch");
        return slices;
    }

    private static Path seasonWithJobFiles(Path season) throws IOException {
        Files.createDirectory(season);
        for (Path from : List.of(Path.of(Launcher.scenario("weather-spring")), JOB_FILES)) {
            try (Stream<Path> files = Files.list(from)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Files.copy(file, season.resolve(file.getFileName()));
                }
            }
        }
        Path comparison = season.resolve("comparison.sh");
        String settings = Files.readString(comparison);
        assertThat(settings).contains(LESS_WORK.keySet());
        for (Map.Entry<String, String> setting : LESS_WORK.entrySet()) {
            settings = settings.replace(setting.getKey(), setting.getValue());
        }
        Files.writeString(comparison, settings);
        return season;
    }

    /** Kills the program while it works on a slice. */
    private static void kill(Path season, String slice) {
        await(() -> ProcessHandle.allProcesses().anyMatch(process -> isAtWorkOn(process, season, slice)), slice);
        ProcessHandle.allProcesses()
                .filter(process -> isAtWorkOn(process, season, slice))
                .forEach(ProcessHandle::destroyForcibly);
    }

    private static boolean isAtWorkOn(ProcessHandle process, Path season, String slice) {
        try {
            Path own = Path.of("/proc", Long.toString(process.pid()));
            return Files.readString(own.resolve("cmdline")).contains("\0-jar\0")
                    && Files.readString(own.resolve("cmdline")).contains("\0" + slice + "\0")
                    && Files.readSymbolicLink(own.resolve("cwd")).equals(season);
        } catch (IOException e) {
            return false; // ended meanwhile, or not ours
        }
    }

    private static void awaitEnd(OneMachineSlurm slurm, Path season) {
        await(
                () -> {
                    try {
                        return slurm.run(season, "squeue", "--noheader").isEmpty();
                    } catch (Exception e) {
                        throw new IllegalStateException(e);
                    }
                },
                "an empty queue");
    }

    private static void await(BooleanSupplier reached, String what) {
        long endMs = System.currentTimeMillis() + LONGEST_MS;
        while (!reached.getAsBoolean()) {
            assertThat(System.currentTimeMillis()).as("waiting for " + what).isLessThan(endMs);
            try {
                Thread.sleep(BETWEEN_LOOKS_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }
    }

    /** When the file of each slice was written. */
    private static Map<String, FileTime> slicesOf(Path season) throws IOException {
        Map<String, FileTime> times = new TreeMap<>();
        try (Stream<Path> slices = Files.list(season.resolve("slices"))) {
            for (Path slice : slices.toList()) {
                times.put(slice.getFileName().toString(), Files.getLastModifiedTime(slice.resolve("compare.json")));
            }
        }
        return times;
    }

    private String ofOneRun() throws IOException {
        Path whole = folder.resolve("whole");
        if (!Files.exists(whole)) {
            String season = Launcher.scenario("weather-spring");
            String springs = Integer.toString(SPRINGS);
            Launcher.Result run =
                    InProcess.run("compare", season, "--springs", springs, "--steps", "0", "--out", whole.toString());
            assertThat(run.exitCode()).as(run.all()).isZero();
        }
        return Files.readString(whole.resolve("compare.json"));
    }
}
