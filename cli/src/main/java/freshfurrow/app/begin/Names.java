package freshfurrow.app.begin;

import freshfurrow.model.text.Formula;
import freshfurrow.model.text.PlainLetters;
import freshfurrow.model.text.Unseen;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Names and ids made of what people type, so that the reader of the file takes them and nothing runs them. */
final class Names {
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_ID = 40;

    private Names() {}

    /** At most 80 visible characters, which no spreadsheet takes for a formula; empty when nothing is left. */
    static String name(String typed) {
        StringBuilder seen = new StringBuilder();
        typed.codePoints().forEach(each -> {
            String character = Character.toString(each);
            if (Character.isWhitespace(each)) {
                seen.append(' ');
            } else if (!Unseen.isIn(character)) {
                seen.append(character);
            }
        });
        String name = seen.toString().replaceAll(" +", " ").strip();
        while (Formula.begins(name)) {
            name = name.substring(name.offsetByCodePoints(0, 1)).strip();
        }
        return cut(name, LONGEST_NAME).strip();
    }

    /**
     * Letters without marks, digits, - and _, of which it starts with one of the first two, and never two hyphens in a row; empty when
     * nothing is left, or letters of another script would be.
     */
    static String id(String typed) {
        String id = PlainLetters.of(typed)
                .orElse("")
                .replaceAll("[^A-Za-z0-9_]+", "-")
                .replaceAll("^[-_]+", "");
        return cut(id, LONGEST_ID).replaceAll("-+$", "");
    }

    /** Never halves a character. */
    private static String cut(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        boolean halves = Character.isHighSurrogate(text.charAt(most - 1));
        return text.substring(0, halves ? most - 1 : most);
    }

    /** Ids of which none is another's, whichever letters are capitals. */
    static final class Taken {
        private final Set<String> taken = new HashSet<>();

        /** The id, or the same with a number behind it, which is taken from then on. */
        String free(String id) {
            String free = id;
            for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) {
                String number = "-" + i;
                free = cut(id, LONGEST_ID - number.length()) + number;
            }
            return free;
        }
    }
}
