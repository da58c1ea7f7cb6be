package freshfurrow.model.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFolderTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    @TempDir
    private Path parent = Path.of("");

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(parent)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void aFolderIsFilledOnce() throws IOException {
        AtomicInteger fillings = new AtomicInteger();
        Path folder = parent.resolve("made");
        for (int i = 0; i < 2; i++) {
            WholeFolder.ensure(folder, PATIENCE, beside -> {
                fillings.incrementAndGet();
                Files.writeString(beside.resolve("part"), "whole");
            });
        }

        assertThat(fillings).hasValue(1);
        assertThat(folder.resolve("part")).hasContent("whole");
        assertThat(names()).containsExactly("made");
    }

    @Test
    void whatCannotBeFilledIsNotThere() throws IOException {
        assertThatThrownBy(() -> WholeFolder.ensure(parent.resolve("made"), PATIENCE, beside -> {
                    Files.writeString(beside.resolve("part"), "half");
                    throw new IOException("the disk is full");
                }))
                .hasMessage("the disk is full");

        assertThat(names()).isEmpty();
    }

    @Test
    void nobodySeesAFolderThatIsNotFilledYet() throws Exception {
        Path folder = parent.resolve("made");
        CountDownLatch half = new CountDownLatch(1);
        CountDownLatch seen = new CountDownLatch(1);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            Future<?> first = threads.submit(() -> {
                WholeFolder.ensure(folder, PATIENCE, beside -> {
                    Files.writeString(beside.resolve("part"), "half");
                    half.countDown();
                    await(seen);
                    Files.writeString(beside.resolve("part"), "whole");
                });
                return folder;
            });
            half.await();
            List<Future<String>> others = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                others.add(threads.submit(() -> {
                    WholeFolder.ensure(folder, PATIENCE, beside -> Files.writeString(beside.resolve("part"), "other"));
                    return Files.readString(folder.resolve("part"));
                }));
            }
            assertThat(folder).doesNotExist();
            seen.countDown();
            first.get();
            for (Future<String> other : others) {
                assertThat(other.get()).isEqualTo("whole");
            }
        } finally {
            threads.shutdownNow();
        }
        assertThat(names()).containsExactly("made");
    }

    private static void await(CountDownLatch latch) throws IOException {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
    }

    @Test
    void whatAKilledWriterLeftIsSweptAway() throws IOException {
        Path left = Files.createDirectories(parent.resolve(".freshfurrow.01234567-89ab-cdef-0123-456789abcdef.tmp"));
        Files.writeString(Files.createDirectories(left.resolve("deep")).resolve("part"), "half");
        Files.writeString(parent.resolve("mine.tmp"), "mine");
        WholeFolder.ensure(parent.resolve("made"), PATIENCE, beside -> {});

        assertThat(names()).containsExactly("made", "mine.tmp");
    }
}
