package freshfurrow.model.text;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a spreadsheet runs as a formula rather than shows as text. */
public final class Formula {
    /** Blanks and what cannot be seen, which some spreadsheets leave out, then a sign in half or full width. */
    private static final Pattern START =
            Pattern.compile("[\\s\\p{Z}\\p{Cc}\\p{Cf}]*+([=+\\-@\\uff1d\\uff0b\\uff0d\\uff20])");

    private Formula() {}

    /** Whether a cell of that text begins a formula, behind whatever blanks. */
    public static boolean begins(String text) {
        return sign(text).isPresent();
    }

    /** The sign by which a cell of that text begins a formula; empty where it begins none. */
    public static Optional<String> sign(String text) {
        Matcher start = START.matcher(text);
        return start.lookingAt() ? Optional.of(start.group(1)) : Optional.empty();
    }
}
