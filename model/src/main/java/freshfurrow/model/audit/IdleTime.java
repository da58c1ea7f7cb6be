package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Sprayer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * For how long planters stand for closed fields while one could be planted that they begin later: of each day the first such wait in their
 * hours, as long as the field could be planted that could be for longest.
 */
final class IdleTime {
    private final Evidence evidence;

    IdleTime(Evidence evidence) {
        this.evidence = evidence;
    }

    /** Minutes of all planters. */
    double minutes() {
        long seconds = 0;
        for (Applicator planter : evidence.season.applicators()) {
            var its = evidence.plan.planters().get(planter.id());
            seconds += its == null ? 0 : seconds(planter, its.activities());
        }
        return seconds / (double) MINUTE_S;
    }

    private long seconds(Applicator planter, List<Activity> activities) {
        Map<Long, Long> byDay = new TreeMap<>();
        for (int i = 0; i < activities.size(); i++) {
            if (activities.get(i) instanceof Activity.Wait wait && Waits.isForField(wait)) {
                List<List<WorkCalendar.Period>> later = begunAfter(i, activities).stream()
                        .map(field -> plantable(planter, field))
                        .toList();
                long end = Math.min(evidence.end(wait), evidence.calendar.end());
                for (long from = evidence.start(wait); from < end; from = (from / DAY_S + 1) * DAY_S) {
                    long until = Math.min(end, (from / DAY_S + 1) * DAY_S);
                    if (overlap(evidence.days.work(planter), from, until) > 0) {
                        byDay.putIfAbsent(from / DAY_S, longest(later, from, until));
                    }
                }
            }
        }
        return byDay.values().stream().mapToLong(Long::longValue).sum();
    }

    private List<Field> begunAfter(int wait, List<Activity> activities) {
        Set<String> before = new LinkedHashSet<>();
        Set<String> after = new LinkedHashSet<>();
        for (int i = 0; i < activities.size(); i++) {
            if (activities.get(i) instanceof Activity.Planting planting) {
                (i < wait ? before : after).add(planting.field());
            }
        }
        after.removeAll(before);
        return after.stream()
                .filter(evidence.fields::containsKey)
                .map(evidence.fields::get)
                .toList();
    }

    private static long longest(List<List<WorkCalendar.Period>> plantable, long from, long until) {
        return plantable.stream()
                .mapToLong(periods -> overlap(periods, from, until))
                .max()
                .orElse(0);
    }

    private static long overlap(List<WorkCalendar.Period> periods, long from, long until) {
        return periods.stream().mapToLong(period -> period.overlap(from, until)).sum();
    }

    private List<WorkCalendar.Period> plantable(Applicator planter, Field field) {
        List<WorkCalendar.Period> periods =
                WorkCalendar.without(evidence.days.work(planter), 0, evidence.calendar.midnight(field.opens()));
        for (WorkCalendar.Period wet : evidence.calendar.wet(field)) {
            periods = WorkCalendar.without(periods, wet.start(), wet.end());
        }
        return planter instanceof Sprayer sprayer ? within(periods, sprayer) : periods;
    }

    private List<WorkCalendar.Period> within(List<WorkCalendar.Period> periods, Sprayer sprayer) {
        List<WorkCalendar.Period> calm = new ArrayList<>();
        for (WorkCalendar.Period open : evidence.calendar.open(sprayer.sprayHours())) {
            for (WorkCalendar.Period period : periods) {
                if (period.overlap(open.start(), open.end()) > 0) {
                    calm.add(new WorkCalendar.Period(
                            Math.max(open.start(), period.start()), Math.min(open.end(), period.end())));
                }
            }
        }
        return calm;
    }
}
