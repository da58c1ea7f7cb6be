package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** When machines work, water points are open and fields are closed by rain or wet ground, in seconds since the first midnight. */
final class WorkCalendar {
    /** From {@code start} to before {@code end}. */
    record Period(long start, long end) {
        boolean contains(long from, long to) {
            return start <= from && to <= end;
        }

        long overlap(long from, long to) {
            return Math.max(0, Math.min(end, to) - Math.max(start, from));
        }
    }

    private final Season season;
    private final Map<String, List<Period>> workOf = new HashMap<>();
    private final Map<WorkHours, List<Period>> allDays = new HashMap<>();
    private final Map<FieldGround, List<Period>> closures = new HashMap<>();
    private final WetPeriods wetPeriods;

    WorkCalendar(Season season) {
        this.season = season;
        wetPeriods = new WetPeriods(season);
    }

    long seconds(LocalDateTime time) {
        return season.time().seconds(time);
    }

    /** Until when a batch keeps, as clocks then show; of an hour that comes twice its start. */
    LocalDateTime keepsUntil(LocalDateTime end, int holdS) {
        LocalDateTime until =
                ZonedDateTime.of(end, season.timezone()).plusSeconds(holdS).toLocalDateTime();
        ZoneOffsetTransition change = season.timezone().getRules().getTransition(until);
        LocalDateTime told = change != null && change.isOverlap() ? change.getDateTimeAfter() : until;
        return told.isBefore(end) ? end : told;
    }

    /** The seconds that pass between two local times. */
    long passed(LocalDateTime from, LocalDateTime to) {
        return ChronoUnit.SECONDS.between(from.atZone(season.timezone()), to.atZone(season.timezone()));
    }

    long midnight(LocalDate date) {
        return season.time().midnight(date);
    }

    long end() {
        return (long) season.days() * DAY_S;
    }

    /** The working periods of a planter or rig: not before the plan begins and not while it is down; periods that touch are one. */
    List<Period> work(String machine, WorkHours hours) {
        return workOf.computeIfAbsent(machine, id -> {
            List<Period> periods = periods(hours, true);
            if (season.standing().isPresent()) {
                periods = without(periods, 0, seconds(season.standing().get().now()));
            }
            for (Outage outage : season.outages()) {
                if (outage.machine().equals(id)) {
                    periods = without(periods, seconds(outage.from()), seconds(outage.until()));
                }
            }
            return periods;
        });
    }

    /** Whether the season is under way, no clocks are changed and a machine is not down, from one moment to another. */
    boolean isUp(String machine, long from, long to) {
        List<Period> up = withoutChangedHours(List.of(new Period(
                season.standing().map(standing -> seconds(standing.now())).orElse(0L), end())));
        for (Outage outage : season.outages()) {
            if (outage.machine().equals(machine)) {
                up = without(up, seconds(outage.from()), seconds(outage.until()));
            }
        }
        return up.stream().anyMatch(period -> period.contains(from, to));
    }

    static List<Period> without(List<Period> periods, long from, long to) {
        List<Period> left = new ArrayList<>();
        for (Period period : periods) {
            if (period.overlap(from, to) == 0) {
                left.add(period);
                continue;
            }
            if (period.start() < from) {
                left.add(new Period(period.start(), from));
            }
            if (to < period.end()) {
                left.add(new Period(to, period.end()));
            }
        }
        return left;
    }

    /** The hours of a water point, which knows no closed days; periods that touch are one. */
    List<Period> open(WorkHours hours) {
        return allDays.computeIfAbsent(hours, these -> periods(these, false));
    }

    /** The times at which a field is closed by rain, wet ground, or what people said of it. */
    List<Period> wet(Field field) {
        return closures.computeIfAbsent(field.ground(), wetPeriods::of);
    }

    /** Whether a field is closed at a moment. */
    boolean isWet(Field field, long time) {
        return wet(field).stream().anyMatch(closed -> closed.start() <= time && time < closed.end());
    }

    private List<Period> periods(WorkHours hours, boolean closedDaysToo) {
        List<Period> all = new ArrayList<>();
        for (int day = 0; day < season.days(); day++) {
            if (closedDaysToo && season.closed().contains(season.first().plusDays(day))) {
                continue;
            }
            for (DaySpan span : hours.spans()) {
                long start = (long) day * DAY_S + span.startS();
                long end = (long) day * DAY_S + span.endS();
                int last = all.size() - 1;
                if (last >= 0 && all.get(last).end() == start) {
                    all.set(last, new Period(all.get(last).start(), end));
                } else {
                    all.add(new Period(start, end));
                }
            }
        }
        return withoutChangedHours(all);
    }

    /** Nobody works in an hour that clocks skip or show twice. */
    private List<Period> withoutChangedHours(List<Period> periods) {
        List<Period> left = periods;
        ZoneRules rules = season.timezone().getRules();
        for (int day = -1; day <= season.days(); day++) {
            ZonedDateTime midnight = season.first().plusDays(day).atStartOfDay(season.timezone());
            ZonedDateTime next = season.first().plusDays(day + 1L).atStartOfDay(season.timezone());
            ZoneOffsetTransition change =
                    rules.nextTransition(midnight.toInstant().minusSeconds(1));
            if (change != null && change.getInstant().isBefore(next.toInstant())) {
                long before = seconds(change.getDateTimeBefore());
                long after = seconds(change.getDateTimeAfter());
                left = without(left, Math.min(before, after), Math.max(before, after));
            }
        }
        return left;
    }
}
