package freshfurrow.model.write;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;

/**
 * One writer of a file at a time, in whatever process. The lock is on a file of its own, as the file itself is replaced when it is
 * written; the operating system lifts it when its process ends, however it ends.
 */
final class FileLock {
    private static final Duration PAUSE = Duration.ofMillis(10);

    private FileLock() {}

    /** What is done while nobody else writes. */
    @FunctionalInterface
    interface Work<T> {
        T run() throws IOException;
    }

    /**
     * Does some work on a file once no other writer is at it.
     *
     * @throws IOException when the work does, there can be no lock file, or another writer takes longer than {@code patience}
     */
    static <T> T holding(Path file, Duration patience, Work<T> work) throws IOException {
        Path lockFile = file.resolveSibling("." + file.getFileName() + ".lock");
        try (FileChannel channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            long end = System.nanoTime() + patience.toNanos();
            while (!isTaken(channel)) {
                if (System.nanoTime() > end) {
                    throw new IOException("another program has been writing it for " + patience.toMillis() + " ms");
                }
                Thread.sleep(PAUSE.toMillis());
            }
            return work.run();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }

    private static boolean isTaken(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            // A thread of this very process holds it.
            return false;
        }
    }
}
