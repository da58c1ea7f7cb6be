package freshfurrow.model.plan;

import java.nio.file.Path;
import java.util.regex.Pattern;

/** A file that cannot be read as a plan; the message is one line with file, place, reason and remedy. */
public final class PlanFileException extends Exception {
    private static final long serialVersionUID = 1L;
    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}+");

    /** @param place line and column or path of keys inside the file; empty when the whole file is meant */
    PlanFileException(Path file, String place, String reason, String remedy) {
        super(oneLine(file + (place.isEmpty() ? "" : ": " + place) + ": " + reason + "; " + remedy));
    }

    private static String oneLine(String text) {
        return CONTROL.matcher(text).replaceAll(" ");
    }
}
