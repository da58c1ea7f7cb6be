package freshfurrow.cli.text;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.ClockFace;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Times as a crew reads them on a sheet of one date: about when, to five minutes, and limits, never later than they are. Times
 * of another date say which.
 */
public record CrewClock(ClockFace face, LocalDate date) {
    /** What stands above such times. */
    public static final String RULE =
            "Times are rounded to 5 minutes. A use-by time is a limit: the last drop is in the ground by then.";

    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);

    /** As {@code 7:20 am}. */
    public String about(LocalDateTime time) {
        return text(FiveMinutes.about(time));
    }

    /** As {@code 12:05 pm}: a limit, such as a use-by time. */
    public String by(LocalDateTime limit) {
        return text(FiveMinutes.last(limit));
    }

    /** The same for a narrow column, as {@code 12:05 pm} or {@code Fri 12:05 am}. */
    public String shortBy(LocalDateTime limit) {
        LocalDateTime last = FiveMinutes.last(limit);
        return (ClockText.isOn(date, last) ? "" : WEEKDAY.format(last) + " ") + clock(last);
    }

    /** About when the last of a load is in the ground, which never reads later than its use-by time. */
    public String lastDrop(Plan.Load load) {
        LocalDateTime about = FiveMinutes.about(load.lastDrop());
        LocalDateTime limit = FiveMinutes.last(load.deadline());
        return text(about.isAfter(limit) ? limit : about);
    }

    /** As {@code Thu Apr 22} or {@code Thu 22 Apr}. */
    public String day(LocalDate other) {
        return new DateText(face).brief(other);
    }

    /** Whether an activity is worth a line: a wait that is over in no time is not. */
    public boolean isTold(Activity activity) {
        return activity.isWork() || !FiveMinutes.about(activity.start()).equals(FiveMinutes.about(activity.end()));
    }

    private String text(LocalDateTime time) {
        return clock(time) + (ClockText.isOn(date, time) ? "" : " on " + day(time.toLocalDate()));
    }

    private String clock(LocalDateTime time) {
        return new ClockText(face).timeOn(date, time);
    }
}
