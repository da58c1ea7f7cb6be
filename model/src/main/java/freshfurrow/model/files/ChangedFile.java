package freshfurrow.model.files;

import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** A file that is not replaced, as it no longer holds what its writer saw. */
public final class ChangedFile extends FileSystemException {
    private static final long serialVersionUID = 1L;

    ChangedFile(Path file) {
        super(file.toString(), null, "was changed meanwhile");
    }
}
