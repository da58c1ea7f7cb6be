package freshfurrow.model.text;

import java.util.regex.Pattern;

/**
 * Characters that cannot be seen and could steer a terminal, turn text around or break a line: control and format characters
 * (Unicode Cc and Cf, those of text direction among them), line and paragraph separators, and halves of surrogate pairs.
 */
public final class Unseen {
    private static final Pattern CHARACTER = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}\\p{Cs}]");

    private Unseen() {}

    /** Whether there is such a character in a text. */
    public static boolean isIn(String text) {
        return CHARACTER.matcher(text).find();
    }

    /** The text with a question mark in place of each such character: one line that is safe to show. */
    public static String marked(String text) {
        return CHARACTER.matcher(text).replaceAll("?");
    }
}
