package freshfurrow.model.files;

import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Optional;

/** A file that is not written, as something is in its way. */
public final class ObstructedFile extends FileSystemException {
    private static final long serialVersionUID = 1L;
    private final Obstacle obstacle;

    ObstructedFile(Path file, Obstacle obstacle) {
        super(file.toString(), null, obstacle.words());
        this.obstacle = obstacle;
    }

    /**
     * Makes sure that nothing is in the way of a file.
     *
     * @throws ObstructedFile when it cannot be written as things are now
     */
    public static void refuse(Path file, IfThere ifThere) throws ObstructedFile {
        Optional<Obstacle> obstacle = Obstacle.before(file, ifThere);
        if (obstacle.isPresent()) {
            throw new ObstructedFile(file, obstacle.get());
        }
    }

    public Obstacle obstacle() {
        return obstacle;
    }
}
