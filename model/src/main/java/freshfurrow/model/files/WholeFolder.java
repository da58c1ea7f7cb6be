package freshfurrow.model.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of files that somebody else writes, such as a library: filled beside, then put in its place whole, and never changed again.
 * Of several who want it one fills it, and the others wait for it. A program that is told to end meanwhile ends at once, and the next one
 * sweeps away what it left.
 */
public final class WholeFolder {
    private WholeFolder() {}

    /** Writes the files. */
    @FunctionalInterface
    public interface Filling {
        /**
         * Writes all of them.
         *
         * @param folder an empty one
         */
        void into(Path folder) throws IOException;
    }

    /**
     * Makes sure that a folder is there, and the one that it is in.
     *
     * @param patience how long somebody else who is filling it is waited for
     * @throws IOException when it cannot be made; then it is not there
     */
    public static void ensure(Path folder, Duration patience, Filling filling) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        Path parent = WriteTurn.folder(folder);
        Files.createDirectories(parent);
        FolderLock lock = FolderLock.take(parent, patience, () -> false);
        try {
            sweep(parent);
            if (!Files.isDirectory(folder)) {
                fill(folder, filling);
            }
        } finally {
            lock.release();
        }
    }

    private static void fill(Path folder, Filling filling) throws IOException {
        Path beside = Beside.newName(folder);
        Files.createDirectory(beside);
        try {
            filling.into(beside);
            try (Stream<Path> files = Files.list(beside)) {
                for (Path file : files.toList()) {
                    force(file);
                }
            }
            Files.move(beside, folder, StandardCopyOption.ATOMIC_MOVE);
            Folders.force(WriteTurn.folder(folder));
        } finally {
            delete(beside);
        }
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Takes away what those who were killed have left, while nobody else is at work. */
    private static void sweep(Path parent) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(
                parent, path -> Beside.isOne(path) && Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))) {
            for (Path path : left) {
                delete(path);
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            List<Path> deepestFirst;
            try (Stream<Path> all = Files.walk(folder)) {
                deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path path : deepestFirst) {
                Files.deleteIfExists(path);
            }
        }
    }
}
