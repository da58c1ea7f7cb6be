package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The first and the last date on which a machine of a plan does something. */
public record WorkDates(LocalDate first, LocalDate last) {
    /** Empty for a plan without work. */
    public static Optional<WorkDates> of(Plan plan) {
        List<Activity> all = Stream.concat(
                        plan.planters().values().stream().flatMap(planter -> planter.activities().stream()),
                        plan.rigs().values().stream().flatMap(rig -> rig.activities().stream()))
                .toList();
        return all.stream().map(Activity::start).min(Comparator.naturalOrder()).flatMap(first -> all.stream()
                .map(Activity::end)
                .max(Comparator.naturalOrder())
                .map(last ->
                        new WorkDates(first.toLocalDate(), last.minusNanos(1).toLocalDate())));
    }

    /** Whether a date is one of them or between them. */
    public boolean contains(LocalDate date) {
        return !date.isBefore(first) && !date.isAfter(last);
    }
}
