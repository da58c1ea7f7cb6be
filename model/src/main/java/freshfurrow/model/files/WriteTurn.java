package freshfurrow.model.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A writer's turn in some folders, in which no other writer of freshfurrow changes any file there. */
public final class WriteTurn {
    /** How long a writer waits for its turn. */
    public static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Deque<FolderLock> locks = new ArrayDeque<>();

    private WriteTurn() {}

    /** What is done in a turn. */
    @FunctionalInterface
    public interface Work<T> {
        T run(WriteTurn turn) throws IOException;
    }

    /**
     * Writes all of the files or none, in a turn of its own. Folders that are missing are made.
     *
     * @throws ObstructedFile when something is in the way of one
     * @throws IOException when one cannot be written; then all is as it was
     */
    public static void writeAll(List<NewFile> files) throws IOException {
        for (NewFile file : files) {
            file.refuseObstructed();
        }
        in(files.stream().map(file -> folder(file.path())).toList(), PATIENCE, turn -> {
            turn.write(files);
            return files.size();
        });
    }

    /**
     * Takes a file away again, in a turn of its own, if it still holds what was written. Whatever else stands there stays.
     *
     * @throws IOException when it cannot be taken away
     */
    public static void takeBack(NewFile file) throws IOException {
        Path path = file.path();
        in(List.of(folder(path)), PATIENCE, turn -> {
            boolean isAsWritten = Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
                    && Arrays.equals(Files.readAllBytes(path), file.content());
            return isAsWritten && Files.deleteIfExists(path);
        });
    }

    /**
     * Waits for a turn and works in it. Folders that are missing are made, and taken away again if nothing comes into them. A program
     * that is told to end meanwhile ends afterwards.
     *
     * @param folders all that the work writes in
     * @throws IOException when the work does, or when the turn does not come within {@code patience}
     */
    public static <T> T in(Collection<Path> folders, Duration patience, Work<T> work) throws IOException {
        return EndHeldOff.during(ending -> {
            Folders made = Folders.made(folders);
            WriteTurn turn = new WriteTurn();
            try {
                Set<Path> real = real(folders);
                for (Path folder : real) {
                    turn.locks.push(FolderLock.take(folder, patience, ending));
                }
                return turn.run(real, work);
            } finally {
                turn.release();
                made.removeEmpty();
            }
        });
    }

    private <T> T run(Set<Path> folders, Work<T> work) throws IOException {
        for (Path folder : folders) {
            Beside.sweep(folder);
        }
        T result = work.run(this);
        for (Path folder : folders) {
            Folders.force(folder);
        }
        return result;
    }

    /** In the order of their names, so that no two writers wait for one another. */
    private static Set<Path> real(Collection<Path> folders) throws IOException {
        Set<Path> real = new TreeSet<>();
        for (Path folder : folders) {
            real.add(folder.toRealPath());
        }
        return real;
    }

    /** The folder that a file is in. */
    public static Path folder(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        return folder == null ? file.toAbsolutePath() : folder;
    }

    /**
     * Writes all of the files or none.
     *
     * @throws IOException when one cannot be written; then all is as it was
     */
    public void write(List<NewFile> files) throws IOException {
        Commit.all(files);
    }

    private void release() throws IOException {
        while (!locks.isEmpty()) {
            locks.pop().release();
        }
    }
}
