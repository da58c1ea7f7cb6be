package freshfurrow.model.files;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/** Why a file is not written where it was to be. */
public enum Obstacle {
    /** There is a file, and nobody asked to replace it. */
    THERE("exists already"),
    /** It is a symbolic link: what it leads to is not what was named. */
    LINK("is a link, and links are not followed"),
    /** It is a folder, a device, a pipe. */
    NO_ORDINARY_FILE("is not an ordinary file");

    private final String words;

    Obstacle(String words) {
        this.words = words;
    }

    /** As it follows the name of the file. */
    public String words() {
        return words;
    }

    /** What is in the way of writing a file, as things are now. */
    public static Optional<Obstacle> before(Path file, IfThere ifThere) {
        if (Files.isSymbolicLink(file)) {
            return Optional.of(LINK);
        }
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(NO_ORDINARY_FILE);
        }
        return ifThere == IfThere.KEEP ? Optional.of(THERE) : Optional.empty();
    }
}
