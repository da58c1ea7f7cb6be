package freshfurrow.model.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;

/** Temporary files beside those to be written, in the same folder, as a rename is atomic only within one file system. */
final class Beside {
    private static final Pattern NAME =
            Pattern.compile("\\.freshfurrow\\.[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.tmp");

    private Beside() {}

    static Path newName(Path file) {
        return file.resolveSibling(".freshfurrow." + UUID.randomUUID() + ".tmp");
    }

    /** Whether something has the name of a temporary file. */
    static boolean isOne(Path path) {
        return NAME.matcher(String.valueOf(path.getFileName())).matches();
    }

    /** Writes what a file is to hold, forced to the disk, with the mode of the file that it is to replace, if there is one. */
    static Path written(NewFile file) throws IOException {
        Path beside = newName(file.path());
        boolean replaces = Files.exists(file.path(), LinkOption.NOFOLLOW_LINKS);
        try {
            try (FileChannel channel = FileChannel.open(
                    beside,
                    Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW),
                    replaces ? Likeness.ownerOnly(beside) : Likeness.usual())) {
                ByteBuffer left = ByteBuffer.wrap(file.content());
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            if (replaces) {
                Likeness.copy(file.path(), beside);
            }
            return beside;
        } catch (IOException e) {
            Files.deleteIfExists(beside);
            throw e;
        }
    }

    /** The old content of a file under another name, to be put back if need be. */
    static Path kept(Path file) throws IOException {
        Path beside = newName(file);
        try {
            Files.createLink(beside, file);
        } catch (IOException | UnsupportedOperationException e) {
            // No second name for a file there: a copy does as well.
            Files.copy(file, beside, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
        }
        return beside;
    }

    /** Takes away what writers that were killed have left in a folder, where none is at work. */
    static void sweep(Path folder) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(
                folder, path -> isOne(path) && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))) {
            for (Path path : left) {
                Files.deleteIfExists(path);
            }
        }
    }
}
