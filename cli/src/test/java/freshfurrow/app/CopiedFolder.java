package freshfurrow.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** A copy of a folder, which tests may change. Plans that somebody made in it stay behind. */
public final class CopiedFolder {
    private CopiedFolder() {}

    /** All that is in it at any depth, in a folder that may be there or not. */
    public static Path of(Path from, Path to) {
        try {
            Files.walkFileTree(from, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes its) throws IOException {
                    if (folder.endsWith("plan")) {
                        return FileVisitResult.SKIP_SUBTREE;
                    }
                    Files.createDirectories(to.resolve(from.relativize(folder).toString()));
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes its) throws IOException {
                    Files.copy(file, to.resolve(from.relativize(file).toString()));
                    return FileVisitResult.CONTINUE;
                }
            });
            return to;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
