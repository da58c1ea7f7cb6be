package freshfurrow.app.begin;

/**
 * A value as it comes to stand in the file.
 *
 * @param text as the season file has it; empty where there is none
 * @param note why it stands there, where nobody answered, or what an answer lacks; empty for a whole answer
 */
public record Filled(String text, String note) {
    public boolean isThere() {
        return !text.isEmpty();
    }
}
