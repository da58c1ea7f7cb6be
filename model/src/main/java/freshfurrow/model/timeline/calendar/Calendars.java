package freshfurrow.model.timeline.calendar;

import freshfurrow.model.quantity.Factors;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.KeptTime;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Working periods and rain closures of a season as seconds since its first midnight. Equal calendars are made once: machines that
 * work the same hours then read the same few lines of memory.
 */
public final class Calendars {
    public static final int DAY_S = Factors.DAY_S;

    private final Season season;
    private final int horizonS;
    private final Map<Work, MachineHours> machines = new HashMap<>();
    private final Map<Applying, Map<FieldGround, Calendar>> plantings = new HashMap<>();
    private final Closures closures;

    private record Applying(Calendar machine, WorkHours hours) {}

    private record Work(
            WorkHours hours,
            List<Outage> outages,
            KeptTime kept,
            Optional<LocalDateTime> begun,
            Optional<LocalDateTime> from) {}

    public Calendars(Season season) {
        this.season = season;
        this.horizonS = season.days() * DAY_S;
        closures = new Closures(season);
    }

    /**
     * When a planter or a rig works: its hours on all days that are not closed, from where the season begins to be played out, but for its
     * outages and for times that clocks leave out or show twice. What it begins its days with is not kept of one that it has begun.
     */
    public MachineHours machine(Machine machine) {
        List<Outage> outages = season.outages().stream()
                .filter(outage -> outage.machine().equals(machine.id()))
                .toList();
        return machines.computeIfAbsent(
                new Work(machine.hours(), outages, machine.kept(), begun(machine), from(machine)), this::working);
    }

    /** The same of a machine that is mounted on a rig: that rig's, without the times in which the machine itself is out of order. */
    public MachineHours mounted(Machine machine, Rig rig) {
        List<Outage> outages = season.outages().stream()
                .filter(outage -> outage.machine().equals(machine.id())
                        || outage.machine().equals(rig.id()))
                .toList();
        return machines.computeIfAbsent(
                new Work(rig.hours(), outages, rig.kept(), begun(rig), from(rig)), this::working);
    }

    private MachineHours working(Work work) {
        Calendar there = Calendar.of(periods(work.hours(), true), horizonS)
                .without(Calendar.joined(out(work.outages(), work.from())), horizonS);
        int dayStartS = work.hours().dayStartS();
        OptionalInt dayBegun = work.begun().stream()
                .mapToInt(begun -> Math.floorDiv(seconds(begun) - dayStartS, DAY_S))
                .findFirst();
        return new MachineHours(
                there,
                work.kept().equals(KeptTime.NONE) ? there : there.without(work.kept(), dayStartS, dayBegun, horizonS),
                dayStartS);
    }

    /** When a machine with such outages does nothing, whatever its hours. */
    private List<int[]> out(List<Outage> outages, Optional<LocalDateTime> from) {
        List<int[]> out = new ArrayList<>();
        from.ifPresent(first -> out.add(new int[] {0, seconds(first)}));
        out.addAll(clockChanges());
        outages.forEach(outage -> out.add(new int[] {seconds(outage.from()), seconds(outage.until())}));
        return out;
    }

    /** From when on a machine works; its day begins no sooner than it is done with what it has begun. */
    private Optional<LocalDateTime> from(Machine machine) {
        return season.standing()
                .map(standing ->
                        machine.kept().equals(KeptTime.NONE) ? standing.now() : standing.freeFrom(machine.id()));
    }

    /** When a rig was set up that is not closed up yet. */
    private Optional<LocalDateTime> begun(Machine machine) {
        return machine.kept().firstS() == 0
                ? Optional.empty()
                : season.standing()
                        .map(standing -> standing.rigs().get(machine.id()))
                        .flatMap(Standing.OfRig::setUpAt);
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

    /**
     * A machine's periods less the times at which a field of such ground is too wet.
     *
     * @param applying the hours in which it may put mix on fields
     */
    public Calendar planting(Calendar machine, WorkHours applying, FieldGround ground) {
        return plantings
                .computeIfAbsent(new Applying(machine, applying), same -> new HashMap<>())
                .computeIfAbsent(ground, same -> planting(machine, same, applying));
    }

    private Calendar planting(Calendar machine, FieldGround ground, WorkHours applying) {
        List<int[]> closed = new ArrayList<>(outside(applying));
        return machine.without(closures(ground), horizonS).without(Calendar.joined(closed), horizonS);
    }

    private List<int[]> outside(WorkHours hours) {
        List<int[]> outside = new ArrayList<>();
        int since = 0;
        for (int[] period : periods(hours, false)) {
            if (since < period[0]) {
                outside.add(new int[] {since, period[0]});
            }
            since = period[1];
        }
        if (since < horizonS) {
            outside.add(new int[] {since, horizonS});
        }
        return outside;
    }

    /** How long a machine may go on in its planting periods of such ground. */
    public Overtime overtime(Applicator machine, Calendar planting, FieldGround ground) {
        if (machine.overtimeS() == 0) {
            return Overtime.none(planting);
        }
        List<int[]> out = out(
                season.outages().stream()
                        .filter(outage -> outage.machine().equals(machine.id()))
                        .toList(),
                season.standing().map(Standing::now));
        out.addAll(closures(ground));
        Calendar possible =
                Calendar.of(List.of(new int[] {0, horizonS}), horizonS).without(Calendar.joined(out), horizonS);
        int nowS = season.standing().map(standing -> seconds(standing.now())).orElse(0);
        boolean worksToday = !season.closed().contains(season.first().plusDays(nowS / DAY_S));
        return Overtime.of(machine, planting, possible, worksToday ? nowS : 0);
    }

    /** When such ground is not too wet, day and night. */
    public Calendar open(FieldGround ground) {
        return Calendar.of(List.of(new int[] {0, horizonS}), horizonS).without(closures(ground), horizonS);
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

    /** Times at which a field of such ground is too wet, joined, in order. */
    public List<int[]> closures(FieldGround ground) {
        return closures.of(ground);
    }
}
