package freshfurrow.model.timeline.calendar;

import freshfurrow.model.quantity.Factors;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Working periods and rain closures of a season as seconds since its first midnight. Equal calendars are made once: machines that
 * work the same hours then read the same few lines of memory.
 */
public final class Calendars {
    public static final int DAY_S = Factors.DAY_S;

    /** Whole days closed are rounded up; this much less than a whole day more is taken for rounding of units. */
    private static final double WHOLE_DAY_TOLERANCE = 1e-9;

    private final Season season;
    private final int horizonS;
    private final Map<Work, Calendar> machines = new HashMap<>();
    private final Map<Calendar, Map<Drainage, Calendar>> plantings = new HashMap<>();

    private record Work(WorkHours hours, List<Outage> outages) {}

    public Calendars(Season season) {
        this.season = season;
        this.horizonS = season.days() * DAY_S;
    }

    /**
     * Working periods of a planter or a rig: its hours on all days that are not closed, from where the season begins to be
     * played out, but for its outages and for times that clocks leave out or show twice.
     */
    public Calendar machine(String id, WorkHours hours) {
        List<Outage> outages = season.outages().stream()
                .filter(outage -> outage.machine().equals(id))
                .toList();
        return machines.computeIfAbsent(new Work(hours, outages), this::working);
    }

    private Calendar working(Work work) {
        return Calendar.of(periods(work.hours(), true), horizonS)
                .without(Calendar.joined(out(work.outages())), horizonS);
    }

    /** When a machine with such outages does nothing, whatever its hours. */
    private List<int[]> out(List<Outage> outages) {
        List<int[]> out = new ArrayList<>();
        season.standing().ifPresent(standing -> out.add(new int[] {0, seconds(standing.now())}));
        out.addAll(clockChanges());
        outages.forEach(outage -> out.add(new int[] {seconds(outage.from()), seconds(outage.until())}));
        return out;
    }

    private List<int[]> clockChanges() {
        return season.clockChanges().all().stream()
                .map(change -> new int[] {seconds(change.from()), seconds(change.until())})
                .filter(out -> out[0] < out[1])
                .toList();
    }

    private int seconds(LocalDateTime time) {
        long s = season.time().seconds(time);
        return (int) Math.max(0, Math.min(horizonS, s));
    }

    /** Periods of a water point: its hours on every day, but for times that clocks leave out or show twice. */
    public Calendar waterPoint(WorkHours hours) {
        return Calendar.of(periods(hours, false), horizonS).without(Calendar.joined(clockChanges()), horizonS);
    }

    /** A machine's periods less the times at which fields of a drainage class are too wet. */
    public Calendar planting(Calendar machine, Drainage drainage) {
        return plantings
                .computeIfAbsent(machine, same -> new EnumMap<>(Drainage.class))
                .computeIfAbsent(drainage, same -> machine.without(closures(same), horizonS));
    }

    /** How long a machine may go on in its planting periods of a drainage class. */
    public Overtime overtime(Applicator machine, Calendar planting, Drainage drainage) {
        if (machine.overtimeS() == 0) {
            return Overtime.none(planting);
        }
        List<int[]> out = out(season.outages().stream()
                .filter(outage -> outage.machine().equals(machine.id()))
                .toList());
        out.addAll(closures(drainage));
        Calendar possible =
                Calendar.of(List.of(new int[] {0, horizonS}), horizonS).without(Calendar.joined(out), horizonS);
        int nowS = season.standing().map(standing -> seconds(standing.now())).orElse(0);
        boolean worksToday = !season.closed().contains(season.first().plusDays(nowS / DAY_S));
        return Overtime.of(machine, planting, possible, worksToday ? nowS : 0);
    }

    /** When the ground of a drainage class is not too wet, day and night. */
    public Calendar openGround(Drainage drainage) {
        return Calendar.of(List.of(new int[] {0, horizonS}), horizonS).without(closures(drainage), horizonS);
    }

    private List<int[]> periods(WorkHours hours, boolean mindClosedDays) {
        List<int[]> periods = new ArrayList<>();
        for (int day = 0; day < season.days(); day++) {
            if (mindClosedDays && season.closed().contains(season.first().plusDays(day))) {
                continue;
            }
            for (DaySpan span : hours.spans()) {
                periods.add(new int[] {day * DAY_S + span.startS(), day * DAY_S + span.endS()});
            }
        }
        return periods;
    }

    /** Times at which fields of a drainage class are too wet, joined, in order. */
    public List<int[]> closures(Drainage drainage) {
        List<int[]> closures = new ArrayList<>();
        for (Rain rain : season.rain()) {
            if (rain.mm() < season.drying().ignoreBelowMm()) {
                continue;
            }
            long day = ChronoUnit.DAYS.between(season.first(), rain.date());
            double days = Math.ceil(rain.mm() * season.drying().daysPerMm(drainage) - WHOLE_DAY_TOLERANCE);
            long from = day * DAY_S + rain.fromS();
            long to = (day + (long) days) * DAY_S;
            if (to > Math.max(0, from) && from < horizonS) {
                closures.add(new int[] {(int) Math.max(0, from), (int) Math.min(horizonS, to)});
            }
        }
        season.ground().ifPresent(ground -> ground.wetDays(drainage).forEach(wet -> {
            long from = ChronoUnit.DAYS.between(season.first(), wet.date()) * DAY_S;
            if (from >= 0 && from < horizonS) {
                closures.add(new int[] {(int) from + wet.fromS(), (int) from + DAY_S});
            }
        }));
        return Calendar.joined(closures);
    }
}
