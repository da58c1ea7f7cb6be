package freshfurrow.model.write;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.read.Problem;
import java.util.List;

/** What came of a line for a season's log. */
public sealed interface LogWriting {
    /**
     * The line is in the log, and stays there even when the power goes.
     *
     * @param log with the new entry
     */
    record Added(Entry entry, SeasonLog log) implements LogWriting {}

    /** The log is as it was: at least one problem, of the new line or of those that were there before. */
    record Refused(List<Problem> problems) implements LogWriting {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
