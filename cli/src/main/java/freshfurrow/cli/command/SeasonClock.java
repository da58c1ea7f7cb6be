package freshfurrow.cli.command;

import freshfurrow.model.season.Season;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** The time that it is where a season is planted. A season may be one of the past, or one to try things out with. */
record SeasonClock(Clock clock) {
    /** Local time in whole minutes. */
    LocalDateTime now(Season season) {
        return LocalDateTime.now(clock.withZone(season.timezone())).truncatedTo(ChronoUnit.MINUTES);
    }

    /** Local time in whole minutes; empty when today is no day of the season. */
    Optional<LocalDateTime> inSeason(Season season) {
        LocalDateTime now = now(season);
        boolean outside =
                now.toLocalDate().isBefore(season.first()) || now.toLocalDate().isAfter(season.last());
        return outside ? Optional.empty() : Optional.of(now);
    }
}
