package freshfurrow.app.editing;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import java.nio.file.Path;
import java.util.Optional;

/** What a file holds at this moment. */
final class FileNow {
    /** As much as any file of a season may hold, MiB. */
    private static final int MOST_MIB = 32;

    private FileNow() {}

    /** Empty when it is not there, or cannot be read. */
    static Optional<TextFile> text(Path path, String name) {
        try {
            return Optional.of(TextFile.read(path, name, MOST_MIB));
        } catch (FileProblem e) {
            return Optional.empty();
        }
    }
}
