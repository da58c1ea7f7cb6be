package freshfurrow.model.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several programs that write in one folder, some of which are killed. */
class WritersAtOnceTest {
    private static final int AT_ONCE = 4;

    @TempDir
    private Path folder;

    @Test
    void fourProgramsThatChangeOneFileLoseNoChange() throws Exception {
        for (Process writer : start("count")) {
            assertThat(writer.waitFor()).isZero();
        }
        assertThat(folder.resolve("count")).hasContent(String.valueOf(20 * AT_ONCE));
        assertThat(names()).containsExactly("count");
    }

    @Test
    void ofFourProgramsThatMakeOneNewFileOneSucceeds() throws Exception {
        List<String> made = new ArrayList<>();
        for (Process writer : start("create")) {
            WriterProcess.said(writer)
                    .lines()
                    .filter(line -> line.startsWith("made"))
                    .forEach(made::add);
        }
        assertThat(made).hasSize(20);
        for (int i = 0; i < 20; i++) {
            Path its = folder.resolve("new" + i);
            assertThat(made).contains("made " + i + " by " + Files.readString(its.resolve("file")));
            assertThat(its.toFile().list()).containsExactly("file");
        }
    }

    @Test
    void filesAreWholeWhenTheirWritersAreKilledAndTheNextWriterSweeps() throws Exception {
        Random random = new Random(5);
        for (int kill = 0; kill < 5; kill++) {
            Process one = begun("sets", "one");
            Process other = begun("sets", "other");
            Thread.sleep(random.nextInt(60));
            one.destroyForcibly().waitFor();
            Thread.sleep(random.nextInt(60));
            other.destroyForcibly().waitFor();
            assertWhole();
        }

        WriteTurn.writeAll(List.of(NewFile.of(folder.resolve("file0"), "last", IfThere.REPLACE)));
        assertThat(names()).allMatch(name -> name.startsWith("file"));
    }

    @Test
    void aProgramThatIsToldToEndFinishesTheSetAndLeavesNothing() throws Exception {
        Random random = new Random(6);
        for (int end = 0; end < 4; end++) {
            Process writer = begun("set", "w" + end);
            Thread.sleep(random.nextInt(30));
            writer.destroy();
            writer.waitFor();

            assertThat(names()).allMatch(name -> name.startsWith("file")).hasSize(WriterProcess.FILES);
            List<String> contents = new ArrayList<>();
            for (int file = 0; file < WriterProcess.FILES; file++) {
                contents.addAll(Files.readAllLines(folder.resolve("file" + file)));
            }
            assertThat(contents).containsOnly("w" + end);
        }
    }

    private List<Process> start(String work) throws IOException {
        List<Process> writers = new ArrayList<>();
        for (int i = 0; i < AT_ONCE; i++) {
            writers.add(WriterProcess.start(work, folder, "writer" + i));
        }
        return writers;
    }

    /** A writer that is at work, so that a kill falls into the writing, not into the start of Java. */
    private Process begun(String work, String name) throws IOException, InterruptedException {
        Process writer = WriterProcess.start(work, folder, name);
        assertThat(writer.inputReader().readLine()).isEqualTo("begun");
        return writer;
    }

    private void assertWhole() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(path -> path.getFileName().toString().startsWith("file"))
                    .toList()) {
                List<String> lines = Files.readAllLines(file);
                assertThat(lines).hasSize(2_000).containsOnly(lines.get(0));
            }
        }
    }

    private String[] names() {
        return folder.toFile().list();
    }
}
