package freshfurrow.cli.text;

import freshfurrow.model.quantity.ClockFace;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates in words as people of a season tell them: with the month first where clocks have twelve hours, and the day first elsewhere. */
record DateText(ClockFace face) {
    private static final DateTimeFormatter LONG_MONTH_FIRST = format("EEEE, MMMM d, uuuu");
    private static final DateTimeFormatter LONG_DAY_FIRST = format("EEEE d MMMM uuuu");
    private static final DateTimeFormatter MONTH_FIRST = format("EEE MMM d");
    private static final DateTimeFormatter DAY_FIRST = format("EEE d MMM");

    /** As {@code Tuesday, April 20, 2027} or {@code Tuesday 20 April 2027}. */
    String full(LocalDate date) {
        return (face == ClockFace.TWELVE_HOURS ? LONG_MONTH_FIRST : LONG_DAY_FIRST).format(date);
    }

    /** As {@code Tue Apr 20} or {@code Tue 20 Apr}. */
    String brief(LocalDate date) {
        return (face == ClockFace.TWELVE_HOURS ? MONTH_FIRST : DAY_FIRST).format(date);
    }

    private static DateTimeFormatter format(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
    }
}
