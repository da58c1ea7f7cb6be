package freshfurrow.model.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;

/** Folders for files that are to be written: made where they are missing, and taken away again when nothing came into them. */
public final class Folders {
    /** Those made here, the deepest first. */
    private final Deque<Path> made = new ArrayDeque<>();

    private Folders() {}

    /**
     * Makes sure that a file can be made in a folder, or in a new folder at its place. Permissions alone do not tell, as on a
     * read-only disk, so one is made and taken away again.
     *
     * @throws IOException when none can
     */
    public static void tryOut(Path folder) throws IOException {
        Path there = folder.toAbsolutePath();
        while (there.getParent() != null && !Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
            there = there.getParent();
        }
        Files.delete(Files.createTempFile(there, ".freshfurrow", ".tmp"));
    }

    static Folders made(Collection<Path> folders) throws IOException {
        Folders all = new Folders();
        try {
            for (Path folder : folders) {
                all.make(folder);
            }
        } catch (IOException e) {
            all.removeEmpty();
            throw e;
        }
        return all;
    }

    private void make(Path folder) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path up = folder; up != null && !Files.exists(up); up = up.getParent()) {
            missing.push(up);
        }
        for (Path one : missing) {
            Files.createDirectories(one);
            made.push(one);
        }
        Files.createDirectories(folder);
    }

    /** Makes what was renamed in a folder last through a power cut. */
    static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems (Windows) cannot open a folder; there a rename is as durable as they make it.
            return;
        }
    }

    /** Takes away again those that nothing came into. */
    void removeEmpty() {
        for (Path folder : made) {
            try {
                Files.delete(folder);
            } catch (IOException e) {
                return; // it has something in it, and so have those above
            }
        }
    }
}
