package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.JsonNode;

/** Text of others made harmless where it stands inside HTML. */
final class InlineText {
    private InlineText() {}

    /** As the content of an element or of a quoted attribute. */
    static String html(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /**
     * As JSON inside a script element. Such characters stand only inside JSON strings, where an escape means the same; so
     * neither an end tag, nor a comment, nor a line end that only scripts know can come about.
     */
    static String json(JsonNode data) {
        return data.toString()
                .replace("<", "\\u003c")
                .replace(">", "\\u003e")
                .replace("&", "\\u0026")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
    }
}
