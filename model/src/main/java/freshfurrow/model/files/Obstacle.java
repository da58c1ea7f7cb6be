package freshfurrow.model.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
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
        BasicFileAttributes what;
        try {
            // looked at once: another program may take it away at any moment
            what = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        } catch (IOException e) {
            return Optional.empty(); // not there, or writing will say why not
        }
        if (what.isSymbolicLink()) {
            return Optional.of(LINK);
        }
        if (!what.isRegularFile()) {
            return Optional.of(NO_ORDINARY_FILE);
        }
        return ifThere == IfThere.KEEP ? Optional.of(THERE) : Optional.empty();
    }
}
