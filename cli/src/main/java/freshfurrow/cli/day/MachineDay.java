package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A machine on a date.
 *
 * @param activities that begin on the date or go on from the day before, in time order
 */
public record MachineDay(Machine machine, LocalDate date, List<Activity> activities) {
    public MachineDay {
        activities = List.copyOf(activities);
    }

    public static MachineDay of(Machine machine, LocalDate date) {
        return new MachineDay(
                machine,
                date,
                machine.activities().stream()
                        .filter(activity -> touches(activity, date))
                        .toList());
    }

    /** The days on which a machine has more to do than to wait, by date, on a date in the order of {@link Machine#of}. */
    public static List<MachineDay> allOf(Plan plan) {
        List<MachineDay> all = new ArrayList<>();
        for (Machine machine : Machine.of(plan)) {
            TreeSet<LocalDate> dates = new TreeSet<>();
            machine.activities().stream().filter(MachineDay::isWork).forEach(work -> work.start()
                    .toLocalDate()
                    .datesUntil(lastDate(work).plusDays(1))
                    .forEach(dates::add));
            dates.forEach(date -> all.add(of(machine, date)));
        }
        all.sort(Comparator.comparing(MachineDay::date));
        return all;
    }

    /** When the first work begins, on this date at the earliest; empty on a day without work. */
    public Optional<LocalDateTime> start() {
        return activities.stream()
                .filter(MachineDay::isWork)
                .map(Activity::start)
                .min(Comparator.naturalOrder())
                .map(start -> later(start, date.atStartOfDay()));
    }

    /** When the last work ends, at the end of this date at the latest; empty on a day without work. */
    public Optional<LocalDateTime> end() {
        LocalDateTime midnight = date.plusDays(1).atStartOfDay();
        return activities.stream()
                .filter(MachineDay::isWork)
                .map(Activity::end)
                .max(Comparator.naturalOrder())
                .map(end -> end.isAfter(midnight) ? midnight : end);
    }

    /** The activities of one kind, in time order. */
    public <T extends Activity> List<T> each(Class<T> kind) {
        return activities.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Whether an activity begins on a date or goes on from the day before. */
    public static boolean touches(Activity activity, LocalDate date) {
        LocalDateTime midnight = date.atStartOfDay();
        return activity.start().toLocalDate().equals(date)
                || (activity.start().isBefore(midnight) && activity.end().isAfter(midnight));
    }

    private static boolean isWork(Activity activity) {
        return !(activity instanceof Activity.Wait);
    }

    private static LocalDate lastDate(Activity activity) {
        LocalDateTime last = activity.end().minusNanos(1);
        return later(last, activity.start()).toLocalDate();
    }

    private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
        return a.isAfter(b) ? a : b;
    }
}
