package freshfurrow.model.text;

import java.util.regex.Pattern;

/** What people call a field by. */
public final class FieldLabel {
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{M}\\p{N}_]+");

    private FieldLabel() {}

    /**
     * Its id, and its name behind it where that says more than the id: {@code N80 North eighty} and {@code Nagyret Nagyrét}, but
     * {@code North-80}.
     */
    public static String of(String id, String name) {
        return name.equals(id) || BETWEEN_WORDS.matcher(name).replaceAll("-").equals(id) ? id : id + " " + name;
    }
}
