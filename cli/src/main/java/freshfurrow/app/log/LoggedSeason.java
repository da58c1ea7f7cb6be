package freshfurrow.app.log;

import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.season.Season;

/** A season, and what its log says. */
public record LoggedSeason(Season season, SeasonLog log) {}
