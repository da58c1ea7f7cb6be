package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A machine on a date.
 *
 * @param activities that begin on the date or go on from the day before, in time order
 */
public record MachineDay(PlannedMachine machine, LocalDate date, List<Activity> activities) {
    public MachineDay {
        activities = List.copyOf(activities);
    }

    /** The days on which a machine does something or waits. */
    public static SortedMap<LocalDate, MachineDay> byDate(PlannedMachine machine) {
        SortedMap<LocalDate, List<Activity>> activities = new TreeMap<>();
        for (Activity activity : machine.activities()) {
            activity.start()
                    .toLocalDate()
                    .datesUntil(lastDate(activity).plusDays(1))
                    .forEach(date -> activities
                            .computeIfAbsent(date, none -> new ArrayList<>())
                            .add(activity));
        }
        SortedMap<LocalDate, MachineDay> days = new TreeMap<>();
        activities.forEach((date, ofDate) -> days.put(date, new MachineDay(machine, date, ofDate)));
        return days;
    }

    /** The days on which a machine has more to do than to wait, by date, on a date in the order of {@link PlannedMachine#of}. */
    public static List<MachineDay> allOf(Plan plan) {
        return allOf(PlannedMachine.of(plan));
    }

    private static List<MachineDay> allOf(List<PlannedMachine> machines) {
        return machines.stream()
                .flatMap(machine -> byDate(machine).values().stream())
                .filter(day -> day.activities.stream().anyMatch(Activity::isWork))
                .sorted(Comparator.comparing(MachineDay::date))
                .toList();
    }

    /** The same, and the days on which a machine has an order for mix that is made already. */
    public static List<MachineDay> withOrders(Plan plan) {
        List<PlannedMachine> machines = PlannedMachine.of(plan);
        List<MachineDay> days = new ArrayList<>(allOf(machines));
        Set<List<Object>> known = new HashSet<>();
        days.forEach(day -> known.add(List.of(day.machine.id(), day.date)));
        plan.start().map(start -> start.now().toLocalDate()).ifPresent(first -> {
            for (MixOrder order : MixOrder.of(plan)) {
                machines.stream()
                        .filter(machine -> machine.id().equals(order.machine()))
                        .filter(machine -> known.add(List.of(machine.id(), first)))
                        .map(machine -> Optional.ofNullable(byDate(machine).get(first))
                                .orElseGet(() -> new MachineDay(machine, first, List.of())))
                        .forEach(days::add);
            }
        });
        days.sort(Comparator.comparing(MachineDay::date));
        return List.copyOf(days);
    }

    /** When the first work begins, on this date at the earliest; empty on a day without work. */
    public Optional<LocalDateTime> start() {
        return activities.stream()
                .filter(Activity::isWork)
                .map(Activity::start)
                .min(Comparator.naturalOrder())
                .map(start -> later(start, date.atStartOfDay()));
    }

    /** When the last work ends, at the end of this date at the latest; empty on a day without work. */
    public Optional<LocalDateTime> end() {
        LocalDateTime midnight = date.plusDays(1).atStartOfDay();
        return activities.stream()
                .filter(Activity::isWork)
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
        return !date.isBefore(activity.start().toLocalDate()) && !date.isAfter(lastDate(activity));
    }

    private static LocalDate lastDate(Activity activity) {
        LocalDateTime last = activity.end().minusNanos(1);
        return later(last, activity.start()).toLocalDate();
    }

    private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
        return a.isAfter(b) ? a : b;
    }
}
