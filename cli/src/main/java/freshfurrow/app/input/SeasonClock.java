package freshfurrow.app.input;

import freshfurrow.model.season.Season;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** The time that it is where a season is planted. A season may be one of the past, or one to try things out with. */
public record SeasonClock(Clock clock) {
    /** Local time in whole minutes. */
    public LocalDateTime now(Season season) {
        return LocalDateTime.now(clock.withZone(season.timezone())).truncatedTo(ChronoUnit.MINUTES);
    }

    /** Local time in whole minutes; empty when today is no day of the season. */
    public Optional<LocalDateTime> inSeason(Season season) {
        return Optional.of(now(season)).filter(now -> isIn(season, now));
    }

    /** Whether a time is on a day of the season. */
    public static boolean isIn(Season season, LocalDateTime time) {
        return !time.toLocalDate().isBefore(season.first())
                && !time.toLocalDate().isAfter(season.last());
    }
}
