package freshfurrow.model.plan;

import freshfurrow.model.text.Unseen;
import java.nio.file.Path;

/** A file that cannot be read as a plan; the message is one line with file, place, reason and remedy. */
public final class PlanFileException extends Exception {
    private static final long serialVersionUID = 1L;

    /** @param place line and column or path of keys inside the file; empty when the whole file is meant */
    PlanFileException(Path file, String place, String reason, String remedy) {
        super(Unseen.marked(file + (place.isEmpty() ? "" : ": " + place) + ": " + reason + "; " + remedy));
    }
}
