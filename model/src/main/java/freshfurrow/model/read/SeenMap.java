package freshfurrow.model.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * A map of roads as it was seen; such files are too large to be read again to see whether they have changed.
 *
 * @param written when, and how many bytes it has; empty when it is not there
 */
public record SeenMap(Path path, Optional<Written> written) {
    /** Of a file. */
    public record Written(FileTime time, long bytes) {}

    static SeenMap of(Path path) {
        try {
            return new SeenMap(path, Optional.of(new Written(Files.getLastModifiedTime(path), Files.size(path))));
        } catch (IOException e) {
            return new SeenMap(path, Optional.empty());
        }
    }

    /** Whether it is as it was seen, by its size and the time when it was written. */
    public boolean isUnchanged() {
        return equals(of(path));
    }
}
