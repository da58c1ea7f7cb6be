package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;

import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.Standing;
import freshfurrow.model.season.WorkHours;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

/** The days of machines' hours, which may run past midnight: what each begins and ends with, and the work that lies between. */
final class WorkingDays {
    private final WorkCalendar calendar;
    private final CarriedOver carried;
    private final Map<String, List<WorkCalendar.Period>> workOf = new HashMap<>();

    WorkingDays(WorkCalendar calendar, CarriedOver carried) {
        this.calendar = calendar;
        this.carried = carried;
    }

    /** The day of a machine's hours that a moment is of: that of the season's dates on which its hours began last. */
    static long day(WorkHours hours, long time) {
        return Math.floorDiv(time - beginning(hours), (long) DAY_S);
    }

    /** Hours that end at midnight and go on at midnight are of the day on which they began, but round the clock. */
    private static int beginning(WorkHours hours) {
        List<DaySpan> spans = hours.spans();
        boolean pastMidnight = spans.size() > 1
                && spans.get(0).startS() == 0
                && spans.get(spans.size() - 1).endS() == DAY_S;
        return spans.get(pastMidnight ? 1 : 0).startS();
    }

    /** The day on which a rig was set up and not closed up before the plan begins. */
    OptionalLong begun(Machine machine) {
        return carried.rig(machine.id())
                .flatMap(Standing.OfRig::setUpAt)
                .map(time -> OptionalLong.of(day(machine.hours(), calendar.seconds(time))))
                .orElse(OptionalLong.empty());
    }

    /** Whether a machine that is done with what it has begun has so much time in one piece left of a day, s. */
    boolean hasTimeLeft(Machine machine, long day, long s) {
        List<WorkCalendar.Period> periods = calendar.work(machine.id(), machine.hours());
        return periods.stream()
                .map(period -> Math.max(free(machine), period.start()))
                .filter(start -> day(machine.hours(), start) == day)
                .anyMatch(start -> periods.stream().anyMatch(period -> period.contains(start, start + s)));
    }

    /** When a machine is done with what it has begun before the plan. */
    private long free(Machine machine) {
        return carried.rig(machine.id())
                .map(Standing.OfRig::freeFrom)
                .or(() -> carried.planter(machine.id()).map(Standing.OfPlanter::freeFrom))
                .map(calendar::seconds)
                .orElse(0L);
    }

    /** The working periods of a machine without what its days begin and end with. */
    List<WorkCalendar.Period> work(Machine machine) {
        return workOf.computeIfAbsent(machine.id(), id -> {
            OptionalLong begun = begun(machine);
            Map<Long, List<WorkCalendar.Period>> days = new TreeMap<>();
            long free = free(machine);
            for (WorkCalendar.Period period : calendar.work(id, machine.hours())) {
                long from = Math.max(free, period.start());
                while (from < period.end()) {
                    long day = day(machine.hours(), from);
                    long until = Math.min(period.end(), (day + 1) * DAY_S + beginning(machine.hours()));
                    days.computeIfAbsent(day, any -> new ArrayList<>()).add(new WorkCalendar.Period(from, until));
                    from = until;
                }
            }
            List<WorkCalendar.Period> work = new ArrayList<>();
            days.forEach((day, periods) -> {
                boolean isBegun = begun.isPresent() && begun.getAsLong() == day;
                work.addAll(between(
                        periods,
                        isBegun ? 0 : machine.kept().firstS(),
                        machine.kept().lastS()));
            });
            return work;
        });
    }

    /** When the work of a day of which nothing is lost ends by the clock, seconds since midnight. */
    static long lastWorkEnd(Machine machine) {
        int beginning = beginning(machine.hours());
        List<WorkCalendar.Period> day = new ArrayList<>();
        for (boolean pastMidnight : List.of(false, true)) {
            for (DaySpan span : machine.hours().spans()) {
                if (span.startS() < beginning == pastMidnight) {
                    long shift = pastMidnight ? DAY_S : 0;
                    int last = day.size() - 1;
                    boolean touches = last >= 0 && day.get(last).end() == span.startS() + shift;
                    long start = touches ? day.remove(last).start() : span.startS() + shift;
                    day.add(new WorkCalendar.Period(start, span.endS() + shift));
                }
            }
        }
        List<WorkCalendar.Period> work =
                between(day, machine.kept().firstS(), machine.kept().lastS());
        return work.isEmpty() ? 0 : (work.get(work.size() - 1).end() - 1) % DAY_S + 1;
    }

    private static List<WorkCalendar.Period> between(List<WorkCalendar.Period> day, long firstS, long lastS) {
        long from = day.stream()
                .filter(period -> period.end() - period.start() >= firstS)
                .mapToLong(period -> period.start() + firstS)
                .min()
                .orElse(Long.MAX_VALUE);
        long until = day.stream()
                .filter(period -> period.end() - Math.max(from, period.start()) >= lastS)
                .mapToLong(period -> period.end() - lastS)
                .max()
                .orElse(Long.MIN_VALUE);
        return day.stream()
                .map(period -> new WorkCalendar.Period(Math.max(from, period.start()), Math.min(until, period.end())))
                .filter(period -> period.start() < period.end())
                .toList();
    }
}
