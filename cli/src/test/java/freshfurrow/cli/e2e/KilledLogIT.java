package freshfurrow.cli.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.LogContext;
import freshfurrow.model.read.LogReader;
import freshfurrow.model.read.LogReading;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log whose writers are killed (SIGKILL) at random moments, two at a time on the same log. */
final class KilledLogIT {
    private static final int KILLS = 50;
    private static final int AT_ONCE = 2;
    private static final int LONGEST_MS = 200;
    private static final String SAFE = "safe ";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void noLineIsHalfThereAndNothingSaidToBeSafeIsLost() throws Exception {
        SeasonOnDisk.in(folder);
        Random random = new Random(50);
        List<String> safe = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill += AT_ONCE) {
            List<Process> writers = new ArrayList<>();
            for (int i = 0; i < AT_ONCE; i++) {
                writers.add(writer("w" + (kill + i)));
            }
            List<BufferedReader> said = new ArrayList<>();
            for (Process writer : writers) {
                // So that the kill falls into the writing, not into the start of Java.
                BufferedReader out = writer.inputReader(StandardCharsets.UTF_8);
                safe.addAll(upToFirstSafe(out));
                said.add(out);
            }
            for (int i = 0; i < AT_ONCE; i++) {
                Thread.sleep(random.nextInt(LONGEST_MS));
                // Through its handle: the process itself would close what it has said.
                writers.get(i).toHandle().destroyForcibly();
                writers.get(i).waitFor();
                safe.addAll(said.get(i)
                        .lines()
                        .filter(line -> line.startsWith(SAFE))
                        .toList());
            }
        }

        // A line that is half there, or a number given twice, would be a problem.
        List<Entry> entries = read();
        assertThat(entries.stream().map(Entry::number).toList())
                .isEqualTo(IntStream.rangeClosed(1, entries.size()).boxed().toList());
        List<String> notes = entries.stream().map(entry -> SAFE + entry.note()).toList();
        assertThat(notes).containsAll(safe).doesNotHaveDuplicates();
        assertThat(notes)
                .as("at most the line being written at a kill is unsaid")
                .hasSizeBetween(safe.size(), safe.size() + KILLS);
        assertThat(safe).hasSizeGreaterThanOrEqualTo(KILLS);
    }

    /** Of the command's jar, with the archive of its classes, as the launcher starts it. */
    private Process writer(String name) throws Exception {
        String java = ProcessHandle.current().info().command().orElse("java");
        Path jar = Launcher.jar();
        Path tests = Path.of(LogUntilKilled.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        return Launcher.start(
                folder,
                Map.of(),
                List.of(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-XX:SharedArchiveFile=" + jar.resolveSibling("freshfurrow.jsa"),
                        "-Xshare:auto",
                        "-Xlog:disable",
                        "-cp",
                        jar + File.pathSeparator + tests,
                        LogUntilKilled.class.getName(),
                        folder.toString(),
                        "2027-04-20T10:00",
                        name));
    }

    private static List<String> upToFirstSafe(BufferedReader out) throws IOException {
        String line = out.readLine();
        while (line != null && !line.startsWith(SAFE)) {
            line = out.readLine();
        }
        assertThat(line).isNotNull();
        return List.of(line);
    }

    private List<Entry> read() {
        Season season = ((Reading.Valid) SeasonFiles.read(folder, List.of())).season();
        LogReading reading = LogReader.read(folder.resolve("log.csv"), LogContext.of(season));
        assertThat(reading).isInstanceOf(LogReading.Valid.class);
        return ((LogReading.Valid) reading).log().entries();
    }
}
