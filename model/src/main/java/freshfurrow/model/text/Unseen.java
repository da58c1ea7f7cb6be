package freshfurrow.model.text;

/**
 * Characters that cannot be seen and could steer a terminal, turn text around or break a line: control and format characters
 * (Unicode Cc and Cf, those of text direction among them), line and paragraph separators, and halves of surrogate pairs.
 */
public final class Unseen {
    private Unseen() {}

    /** Whether there is such a character in a text. */
    public static boolean isIn(String text) {
        return text.codePoints().anyMatch(Unseen::isUnseen);
    }

    /** The text with a question mark in place of each such character: one line that is safe to show. */
    public static String marked(String text) {
        StringBuilder marked = new StringBuilder(text.length());
        text.codePoints()
                .map(character -> isUnseen(character) ? '?' : character)
                .forEach(marked::appendCodePoint);
        return marked.toString();
    }

    private static boolean isUnseen(int character) {
        if (character >= ' ' && character <= '~') {
            return false;
        }
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> true;
            default -> false;
        };
    }
}
