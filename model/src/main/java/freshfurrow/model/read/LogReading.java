package freshfurrow.model.read;

import freshfurrow.model.log.SeasonLog;
import java.util.List;

/** What came of reading a season's log: the log, or all that is wrong with its file. */
public sealed interface LogReading {
    /**
     * A log without a problem.
     *
     * @param sha256 of the file, lower-case hex; that of no bytes when there is no file yet
     */
    record Valid(SeasonLog log, String sha256) implements LogReading {}

    /** At least one problem, in the order of lines. */
    record Invalid(List<Problem> problems) implements LogReading {
        public Invalid {
            problems = List.copyOf(problems);
        }
    }
}
