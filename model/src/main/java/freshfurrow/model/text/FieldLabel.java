package freshfurrow.model.text;

import java.util.regex.Pattern;

/** What people call a field by. */
public final class FieldLabel {
    private static final Pattern NOT_OF_IDS = Pattern.compile("[^A-Za-z0-9_-]+");

    private FieldLabel() {}

    /** Its id, and its name behind it where that says more than the id: {@code N80 North eighty}, but {@code North-80}. */
    public static String of(String id, String name) {
        return NOT_OF_IDS.matcher(name).replaceAll("-").equals(id) ? id : id + " " + name;
    }
}
