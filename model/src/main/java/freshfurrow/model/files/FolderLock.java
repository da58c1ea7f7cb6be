package freshfurrow.model.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;

/**
 * The right of one process to write in a folder. It is a lock on a file {@value #NAME} there, which the operating system lifts when
 * its process ends, however it ends; the file goes with the lock.
 */
final class FolderLock {
    static final String NAME = ".freshfurrow.lock";

    private static final Duration PAUSE = Duration.ofMillis(10);
    private static final int TOKEN_LENGTH = 36;
    private static final Pattern TOKEN = Pattern.compile("[0-9a-f-]{0," + TOKEN_LENGTH + "}");

    /** A byte beyond what is in the file, as some systems let nobody read a byte that is locked. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private final Path file;
    private final FileChannel locked;
    private final FileChannel seen;

    private FolderLock(Path file, FileChannel locked, FileChannel seen) {
        this.file = file;
        this.locked = locked;
        this.seen = seen;
    }

    /**
     * Waits for the lock.
     *
     * @param ending whether the program was told to end and waits no longer
     * @throws IOException when there can be no such lock, or it is not free within {@code patience}
     */
    static FolderLock take(Path folder, Duration patience, BooleanSupplier ending) throws IOException {
        Path file = folder.resolve(NAME);
        long endNs = System.nanoTime() + patience.toNanos();
        BooleanSupplier over = () -> ending.getAsBoolean() || System.nanoTime() - endNs > 0;
        while (true) {
            Optional<FolderLock> taken = tryOnce(file, over);
            if (taken.isPresent()) {
                return taken.get();
            }
            if (over.getAsBoolean()) {
                throw new IOException("another program has been writing there for " + patience.toMillis() + " ms");
            }
        }
    }

    /** Nothing when the file went away, as the writer before took it with its lock, or when time is over. */
    private static Optional<FolderLock> tryOnce(Path file, BooleanSupplier over) throws IOException {
        if (Obstacle.before(file, IfThere.REPLACE).isPresent()) {
            throw new ObstructedFile(file, Obstacle.NO_ORDINARY_FILE);
        }
        FileChannel channel = FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE,
                LinkOption.NOFOLLOW_LINKS);
        Optional<FolderLock> taken = Optional.empty();
        try {
            if (isLocked(channel, over)) {
                taken = confirmed(file, channel);
            }
        } finally {
            if (taken.isEmpty()) {
                channel.close();
            }
        }
        return taken;
    }

    private static boolean isLocked(FileChannel channel, BooleanSupplier over) throws IOException {
        while (!isFree(channel)) {
            if (over.getAsBoolean()) {
                return false;
            }
            try {
                Thread.sleep(PAUSE.toMillis());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IOException("interrupted", e);
            }
        }
        return true;
    }

    private static boolean isFree(FileChannel channel) throws IOException {
        try {
            return channel.tryLock(LOCKED_BYTE, 1, false) != null;
        } catch (OverlappingFileLockException e) {
            return false; // a thread of this very process holds it
        }
    }

    /**
     * The lock, if what is locked is still the file of that name. To tell, a token goes into the one and has to be read from the other;
     * that stays open until the end, as some systems lift all locks of a process on a file when it closes it once.
     */
    private static Optional<FolderLock> confirmed(Path file, FileChannel channel) throws IOException {
        if (!TOKEN.matcher(text(channel)).matches()) {
            throw new IOException(NAME + " there is no lock of freshfurrow; move it away");
        }
        String token = UUID.randomUUID().toString();
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(token.getBytes(StandardCharsets.US_ASCII)), 0);
        FileChannel seen;
        try {
            seen = FileChannel.open(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
        if (text(seen).equals(token)) {
            return Optional.of(new FolderLock(file, channel, seen));
        }
        seen.close();
        return Optional.empty();
    }

    private static String text(FileChannel channel) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(TOKEN_LENGTH + 1);
        int read = channel.read(buffer, 0);
        return new String(buffer.array(), 0, Math.max(0, read), StandardCharsets.ISO_8859_1);
    }

    /** The file goes first, while nobody else can have the lock. */
    void release() throws IOException {
        try {
            Files.deleteIfExists(file);
        } finally {
            seen.close();
            locked.close();
        }
    }
}
