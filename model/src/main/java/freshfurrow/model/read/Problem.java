package freshfurrow.model.read;

import java.util.OptionalInt;

/**
 * One thing that is wrong with a file.
 *
 * @param file name as people know it
 * @param line from 1, where it stands on one
 * @param path keys from the root, joined by dots; empty for the file as a whole
 * @param reason what is wrong
 * @param remedy what would be right
 */
public record Problem(String file, OptionalInt line, String path, String reason, String remedy) {
    /** One line: where, what, and what would be right. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(file);
        line.ifPresent(number -> text.append(':').append(number));
        text.append(": ");
        if (!path.isEmpty()) {
            text.append(path).append(": ");
        }
        return text.append(reason).append("; ").append(remedy).toString().replaceAll("\\p{Cntrl}", "?");
    }
}
