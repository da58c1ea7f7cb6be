package freshfurrow.model.season;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;

/**
 * Local times as whole seconds, and dates as whole days, since a season's first midnight. Every day has 86,400 seconds, as clocks
 * show them: what passes where clocks are changed is told by {@link ClockChanges}.
 *
 * @param first the season's first day
 */
public record SeasonTime(LocalDate first) {
    /** Below 0 before the season. */
    public long seconds(LocalDateTime time) {
        return ChronoUnit.SECONDS.between(first.atStartOfDay(), time);
    }

    /** The midnight that begins a date, s; below 0 before the season. */
    public long midnight(LocalDate date) {
        return seconds(date.atStartOfDay());
    }

    /** 0 on the first day, below it before the season. */
    public long day(LocalDate date) {
        return ChronoUnit.DAYS.between(first, date);
    }

    /** The local time so many seconds after the first midnight. */
    public LocalDateTime at(long seconds) {
        return first.atStartOfDay().plusSeconds(seconds);
    }
}
