package freshfurrow.model.write;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.read.Problem;
import java.util.List;

/** What came of lines for a season's log. */
public sealed interface LogWriting {
    /**
     * The lines are in the log, and stay there even when the power goes.
     *
     * @param entries the new ones
     * @param log with the new entries
     */
    record Added(List<Entry> entries, SeasonLog log) implements LogWriting {
        public Added {
            entries = List.copyOf(entries);
        }
    }

    /** The log is as it was: at least one problem, of a new line or of those that were there before. */
    record Refused(List<Problem> problems) implements LogWriting {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
