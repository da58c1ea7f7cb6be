package freshfurrow.cli.text;

import freshfurrow.model.quantity.ClockFace;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times of day as people of a season tell them, in minutes begun. */
record ClockText(ClockFace face) {
    private static final DateTimeFormatter TWENTY_FOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter TWELVE = DateTimeFormatter.ofPattern("h:mm", Locale.ROOT);
    private static final int NOON = 12;

    /** As {@code 07:05} or {@code 7:05 am}; twelve o'clock by its name, as few agree which of the two is am. */
    String time(LocalDateTime time) {
        if (face == ClockFace.TWENTY_FOUR_HOURS) {
            return TWENTY_FOUR.format(time);
        }
        if (time.getMinute() == 0 && time.getHour() % NOON == 0) {
            return time.getHour() == NOON ? "noon" : "midnight";
        }
        return TWELVE.format(time) + (time.getHour() < NOON ? " am" : " pm");
    }

    /** Whether a time is told on a sheet of that date without a date of its own: it is of that date, or the midnight that ends it. */
    static boolean isOn(LocalDate date, LocalDateTime time) {
        return time.toLocalDate().equals(date) || isEndOf(date, time);
    }

    /** The same; the midnight that ends the date is 24:00. */
    String timeOn(LocalDate date, LocalDateTime time) {
        return face == ClockFace.TWENTY_FOUR_HOURS && isEndOf(date, time) ? "24:00" : time(time);
    }

    private static boolean isEndOf(LocalDate date, LocalDateTime time) {
        return time.equals(date.plusDays(1).atStartOfDay());
    }
}
