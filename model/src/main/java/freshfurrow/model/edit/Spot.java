package freshfurrow.model.edit;

import java.util.List;

/** A part of a text with where it stands: from {@code start} up to {@code end}, both counted in characters of the text. */
sealed interface Spot {
    int start();

    /** Behind the last character of its own; blanks and comments that follow are none of its own. */
    int end();

    /** A single value; of no length where nothing is written. */
    record Scalar(int start, int end, Quotes quotes) implements Spot {}

    /**
     * Keys with what they hold.
     *
     * @param flow whether it is in braces
     */
    record Mapping(int start, int end, boolean flow, List<Entry> entries) implements Spot {}

    /**
     * A list.
     *
     * @param flow whether it is in brackets
     */
    record Sequence(int start, int end, boolean flow, List<Spot> items) implements Spot {}

    /**
     * A key with what it holds.
     *
     * @param start where the key starts
     * @param keyEnd behind the key; in JSON, not known better than its start
     */
    record Entry(int start, int keyEnd, Quotes quotes, String key, Spot value) {
        int end() {
            return value.end();
        }
    }
}
