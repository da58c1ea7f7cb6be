package freshfurrow.app.log;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.season.Season;

/**
 * An entry that is in a log now.
 *
 * @param log with the entry
 */
public record AddedEntry(Season season, SeasonLog log, Entry entry) {}
