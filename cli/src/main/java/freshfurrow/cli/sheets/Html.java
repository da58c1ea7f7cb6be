package freshfurrow.cli.sheets;

/** HTML under construction. All text goes through it, so that no name from a file can become markup. */
final class Html {
    private final StringBuilder html = new StringBuilder();

    /** Markup of the program's own. */
    Html raw(String markup) {
        html.append(markup);
        return this;
    }

    /** Text of any origin; control characters, which HTML has no place for, become blanks. */
    Html text(String text) {
        text.codePoints().forEach(this::character);
        return this;
    }

    /** Text of any origin, set apart so that letters that run from right to left leave their surroundings alone. */
    Html name(String text) {
        return raw("<bdi>").text(text).raw("</bdi>");
    }

    /** An element with text in it. */
    Html element(String tag, String text) {
        return raw("<" + tag + ">").text(text).raw("</" + tag + ">");
    }

    private void character(int character) {
        switch (character) {
            case '&' -> html.append("&amp;");
            case '<' -> html.append("&lt;");
            case '>' -> html.append("&gt;");
            case '"' -> html.append("&quot;");
            case '\'' -> html.append("&#39;");
            default -> html.appendCodePoint(isPlain(character) ? character : ' ');
        }
    }

    private static boolean isPlain(int character) {
        return !Character.isISOControl(character)
                && Character.getType(character) != Character.SURROGATE
                && character != 0xfffe
                && character != 0xffff;
    }

    @Override
    public String toString() {
        return html.toString();
    }
}
