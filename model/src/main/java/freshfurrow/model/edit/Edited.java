package freshfurrow.model.edit;

import freshfurrow.model.read.Problem;

/** What came of an edit. */
public sealed interface Edited {
    /** The season with the edit, and all else as it was. */
    record Changed(SeasonText text) implements Edited {}

    /** The edit cannot be made in the text, and nothing else was tried. */
    record Refused(Problem problem) implements Edited {}
}
