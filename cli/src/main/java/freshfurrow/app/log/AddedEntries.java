package freshfurrow.app.log;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.season.Season;
import java.util.List;

/**
 * Entries that are in a log now.
 *
 * @param log with the entries
 */
public record AddedEntries(Season season, SeasonLog log, List<Entry> entries) {
    public AddedEntries {
        entries = List.copyOf(entries);
    }
}
