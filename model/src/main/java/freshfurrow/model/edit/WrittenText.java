package freshfurrow.model.edit;

import java.util.Optional;

/** Texts of any origin as they stand in a new file, so that they are read back to the letter. */
public final class WrittenText {
    private WrittenText() {}

    /** A value behind its key in a block of YAML, with quotes only where it takes them; empty when there is no way to write it. */
    public static Optional<String> inBlock(String text) {
        return ScalarText.yaml(text, false, Quotes.NONE);
    }

    /** A value within brackets or braces of YAML; empty when there is no way to write it. */
    public static Optional<String> inFlow(String text) {
        return ScalarText.yaml(text, true, Quotes.NONE);
    }
}
