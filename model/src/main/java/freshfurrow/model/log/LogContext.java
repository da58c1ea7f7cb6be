package freshfurrow.model.log;

import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;

/**
 * What a log may speak of.
 *
 * @param plannedLoads ids of all loads ever planned for the season; empty when loads are not to be checked
 * @param latest no fact may be later than this, local time
 */
public record LogContext(Season season, Optional<Set<String>> plannedLoads, LocalDateTime latest) {
    public LogContext {
        plannedLoads = plannedLoads.map(Set::copyOf);
    }

    /** Facts of any time up to the season's end, loads of any name. */
    public static LogContext of(Season season) {
        return new LogContext(season, Optional.empty(), season.end());
    }
}
