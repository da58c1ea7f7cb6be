package freshfurrow.cli.text;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.ClosedDays;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.WorkHours;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Where a planter's working time went between two dates, as its activities tell.
 *
 * @param parts what it did and for how much of its working hours, the longest first
 */
public record TimeUse(List<Part> parts) {
    /** One kind of work, and how long it took. */
    public record Part(String what, Duration howLong) {}

    public TimeUse {
        parts = List.copyOf(parts);
    }

    /**
     * Planting of one field apart from that of others.
     *
     * @param field the field that was waiting for the planter
     */
    public static TimeUse of(
            Plan.PlanterPlan planter, String field, DateWindow window, WorkHours hours, ClosedDays closed) {
        return of(
                planter,
                window,
                hours,
                closed,
                planting -> planting.field().equals(field) ? "on this field" : "on other fields");
    }

    /** All planting as one. */
    static TimeUse of(Plan.PlanterPlan planter, DateWindow window, WorkHours hours, ClosedDays closed) {
        String doing = WorkWords.of(planter.work()).noun();
        return of(planter, window, hours, closed, planting -> doing);
    }

    private static TimeUse of(
            Plan.PlanterPlan planter,
            DateWindow window,
            WorkHours hours,
            ClosedDays closed,
            Function<Activity.Planting, String> planting) {
        Work work = new Work(planting);
        Map<String, Duration> byWork = new LinkedHashMap<>();
        for (Activity activity : planter.activities()) {
            Duration within = dates(activity, window)
                    .filter(date -> !closed.contains(date))
                    .map(date -> worked(activity, date, hours))
                    .reduce(Duration.ZERO, Duration::plus);
            if (!within.isZero()) {
                byWork.merge(activity.accept(work), within, Duration::plus);
            }
        }
        return new TimeUse(byWork.entrySet().stream()
                .map(part -> new Part(part.getKey(), part.getValue()))
                .sorted(Comparator.comparing(Part::howLong).reversed())
                .toList());
    }

    /** Of the window, those whose hours an activity may lie in: hours may go on past midnight. */
    private static Stream<LocalDate> dates(Activity activity, DateWindow window) {
        LocalDate dayBefore = activity.start().toLocalDate().minusDays(1);
        LocalDate first = dayBefore.isBefore(window.first()) ? window.first() : dayBefore;
        LocalDate last = activity.end().toLocalDate();
        LocalDate end = (last.isAfter(window.last()) ? window.last() : last).plusDays(1);
        return first.isBefore(end) ? first.datesUntil(end) : Stream.empty();
    }

    private static Duration worked(Activity activity, LocalDate date, WorkHours hours) {
        LocalDateTime midnight = date.atStartOfDay();
        return hours.spans().stream()
                .map(span -> overlap(activity, midnight.plusSeconds(span.startS()), midnight.plusSeconds(span.endS())))
                .reduce(Duration.ZERO, Duration::plus);
    }

    private static Duration overlap(Activity activity, LocalDateTime from, LocalDateTime to) {
        LocalDateTime start = activity.start().isBefore(from) ? from : activity.start();
        LocalDateTime end = activity.end().isAfter(to) ? to : activity.end();
        return start.isBefore(end) ? Duration.between(start, end) : Duration.ZERO;
    }

    /** What an activity is told as. */
    private record Work(Function<Activity.Planting, String> planting) implements ActivityVisitor.OfPlanter<String> {
        @Override
        public String visit(Activity.Move move) {
            return "driving";
        }

        @Override
        public String visit(Activity.Wait wait) {
            return waiting(wait.why());
        }

        @Override
        public String visit(Activity.Fill fill) {
            return "on fills";
        }

        @Override
        public String visit(Activity.Plant plant) {
            return planting.apply(plant);
        }

        @Override
        public String visit(Activity.PlantWithout without) {
            return planting.apply(without);
        }

        @Override
        public String visit(Activity.Flush flush) {
            return "flushing";
        }
    }

    private static String waiting(WaitReason why) {
        return switch (why) {
            case RIG -> "waiting for a rig";
            case WET -> "waiting on wet ground";
            case WINDOW -> "waiting for a window to open";
            case HOURS -> "stopped until work resumes";
            case COMPOST -> "waiting for compost";
            case WATER -> "waiting for water";
            case SPRAY_HOURS -> "waiting for spray hours";
        };
    }
}
