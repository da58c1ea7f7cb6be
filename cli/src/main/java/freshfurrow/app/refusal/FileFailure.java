package freshfurrow.app.refusal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Optional;

/** Why a file could not be read or written, as far as the system tells. */
public final class FileFailure {
    private FileFailure() {}

    /** The reason in a few words, none of which steers a terminal. */
    public static String reason(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (failure instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (failure instanceof FileAlreadyExistsException || failure instanceof NotDirectoryException) {
            return "there is a file where a folder is needed";
        }
        Optional<String> said = failure instanceof FileSystemException system
                ? Optional.ofNullable(system.getReason())
                : Optional.ofNullable(failure.getMessage());
        return said.map(reason -> reason.replaceAll("\\p{Cntrl}+", " "))
                .orElse(failure.getClass().getSimpleName());
    }
}
