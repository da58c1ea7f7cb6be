package freshfurrow.cli.page;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;

/**
 * Times in the page's data: whole seconds, and whole days, since the season's first midnight by the local clock, so that the
 * browser's own time zone has no part in it.
 */
record Clock(LocalDate first) {
    long seconds(LocalDateTime time) {
        return ChronoUnit.SECONDS.between(first.atStartOfDay(), time);
    }

    long day(LocalDate date) {
        return ChronoUnit.DAYS.between(first, date);
    }
}
