package freshfurrow.model.plan;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file whole or not at all: whoever looks sees the old content or the new one, even after a power cut. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes text as UTF-8, in place of what the file held before. Whether it may be replaced is for the caller to ask.
     *
     * @param target the file; its folder has to be there; when it is a symbolic link, what it links to is written
     * @throws IOException when it cannot be written; then the file is as it was and nothing is left beside it
     */
    public static void write(Path target, String text) throws IOException {
        write(target, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes, in place of what the file held before.
     *
     * @see #write(Path, String)
     */
    public static void write(Path target, byte[] content) throws IOException {
        Path file = Files.isSymbolicLink(target) ? target.toRealPath() : target.toAbsolutePath();
        // Beside the target, as a rename is atomic only within one file system.
        Path beside = file.resolveSibling("." + file.getFileName() + "." + UUID.randomUUID() + ".tmp");
        try {
            try (FileChannel channel =
                    FileChannel.open(beside, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
                ByteBuffer left = ByteBuffer.wrap(content);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(beside);
        }
        forceFolder(file.resolveSibling("."));
    }

    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems (Windows) cannot open a folder; there the rename is as durable as they make it.
            return;
        }
    }
}
