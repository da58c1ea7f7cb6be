package freshfurrow.model.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/** Weekdays and dates on which neither planters nor rigs work. Water points are not bound by them. */
public record ClosedDays(Set<DayOfWeek> weekdays, Set<LocalDate> dates) {
    public ClosedDays {
        weekdays = Set.copyOf(weekdays);
        dates = Set.copyOf(dates);
    }

    public boolean contains(LocalDate date) {
        return weekdays.contains(date.getDayOfWeek()) || dates.contains(date);
    }
}
