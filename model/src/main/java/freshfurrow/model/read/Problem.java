package freshfurrow.model.read;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.text.Unseen;
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
    static final String MISSING = "is missing";

    private static final int LONGEST_PATH = 120;
    private static final int LONGEST_REASON = 200;

    /** A file, or a part of one, that cannot be read or used at all. */
    public static Problem of(FileProblem problem) {
        Place at = problem.place();
        OptionalInt line = at.line() > 0 ? OptionalInt.of(at.line()) : OptionalInt.empty();
        return new Problem(at.file(), line, at.path(), problem.reason(), problem.remedy());
    }

    /** Whether nothing is wrong there: what belongs there was not written. */
    public boolean isOfMissing() {
        return reason.equals(MISSING);
    }

    /** One line: where, what, and what would be right; what is overlong is cut, what cannot be seen is shown as "?". */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(file);
        line.ifPresent(number -> text.append(':').append(number));
        text.append(": ");
        if (!path.isEmpty()) {
            text.append(shownPath()).append(": ");
        }
        text.append(cut(reason, LONGEST_REASON)).append("; ").append(remedy);
        return Unseen.marked(text.toString());
    }

    String shownPath() {
        return Unseen.marked(cut(path, LONGEST_PATH));
    }

    /** The text without its middle when it is too long: a message ends with what is wrong. */
    private static String cut(String text, int most) {
        int end = (most - 1) / 2;
        return text.length() <= most ? text : text.substring(0, end) + "…" + text.substring(text.length() - end);
    }
}
