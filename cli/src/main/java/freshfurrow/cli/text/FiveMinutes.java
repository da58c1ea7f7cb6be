package freshfurrow.cli.text;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;

/**
 * The one rule by which times for crews are rounded: to five minutes, as nobody works by the second; but a limit is never
 * made later than it is. Exact times stay in plan files and tables.
 */
final class FiveMinutes {
    private static final int STEP_S = 300;
    private static final int STEP_MIN = 5;

    private FiveMinutes() {}

    /** The nearest five minutes; half of them go up. */
    static LocalDateTime about(LocalDateTime time) {
        return last(time.plusSeconds(STEP_S / 2));
    }

    /** The last five minutes at or before a limit. */
    static LocalDateTime last(LocalDateTime limit) {
        LocalDateTime minute = limit.truncatedTo(ChronoUnit.MINUTES);
        return minute.minusMinutes(minute.getMinute() % STEP_MIN);
    }
}
