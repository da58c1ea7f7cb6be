package freshfurrow.model.weather;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.WetDay;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * How many of some days are workable, over many springs.
 *
 * @param first first of the days
 * @param days how many days there are to work on
 * @param in8Of10 workable days that at least 8 of 10 springs reach
 * @param in5Of10 workable days that at least half of the springs reach
 * @param in2Of10 workable days that at least 2 of 10 springs reach
 */
public record WorkableDays(LocalDate first, int days, int in8Of10, int in5Of10, int in2Of10) {

    /**
     * The workable days of fields of a drainage class.
     *
     * @param springs at least one
     * @param first first day, within the springs
     * @param last last day, included
     * @param counts which of the days are counted
     */
    public static WorkableDays of(
            List<Spring> springs, Drainage drainage, LocalDate first, LocalDate last, Predicate<LocalDate> counts) {
        List<LocalDate> dates =
                first.datesUntil(last.plusDays(1)).filter(counts).toList();
        int[] workable = springs.stream()
                .mapToInt(spring -> workable(spring, drainage, dates))
                .sorted()
                .toArray();
        return new WorkableDays(first, dates.size(), reached(workable, 8), reached(workable, 5), reached(workable, 2));
    }

    /** Weeks from a season's first day on; the last may be shorter. */
    public static List<WorkableDays> byWeek(List<Spring> springs, Drainage drainage, LocalDate first, LocalDate last) {
        return first.datesUntil(last.plusDays(1), Period.ofWeeks(1))
                .map(week -> of(
                        springs,
                        drainage,
                        week,
                        ChronoUnit.DAYS.between(week, last) < 7 ? last : week.plusDays(6),
                        date -> true))
                .toList();
    }

    private static int workable(Spring spring, Drainage drainage, List<LocalDate> dates) {
        Set<LocalDate> wet =
                spring.ground().wetDays(drainage).stream().map(WetDay::date).collect(Collectors.toSet());
        return (int) dates.stream().filter(date -> !wet.contains(date)).count();
    }

    /** The most days that so many of ten springs reach: the figure at the place before which the others lie, in rising order. */
    private static int reached(int[] rising, int ofTen) {
        int reaching = (rising.length * ofTen + 9) / 10;
        return rising[rising.length - reaching];
    }
}
