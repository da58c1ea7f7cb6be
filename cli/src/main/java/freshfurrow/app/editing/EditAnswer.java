package freshfurrow.app.editing;

import java.util.Optional;

/** What came of edits, of undoing or of redoing them. */
public sealed interface EditAnswer {
    /** All of them are on the disk. */
    record Saved(Draft draft) implements EditAnswer {}

    /**
     * A file is not as whoever asked has seen it, so nothing is written.
     *
     * @param file the name that problems give it
     * @param onDisk what it holds now; empty when it was deleted or cannot be read any more
     * @param asEdited what it would hold if nobody else had changed it; empty when that is no longer known
     */
    record ChangedMeanwhile(String file, Optional<String> onDisk, Optional<String> asEdited) implements EditAnswer {}
}
