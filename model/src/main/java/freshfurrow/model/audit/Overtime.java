package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.season.Applicator;
import java.util.List;
import java.util.OptionalLong;

/** Planting past the last hours of a day: for how long, and whether it finishes something. */
final class Overtime {
    private final Evidence evidence;

    Overtime(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        for (Evidence.Done<Activity.Planting> done : evidence.all(Activity.Planting.class)) {
            if (isWithin(done.machine(), done.activity()) && !finishesField(done.activity()) && !usesUpLoad(done)) {
                evidence.report(
                        Rule.OVERTIME,
                        done.where(),
                        "it plants past the day's last hours and neither finishes "
                                + done.activity().field() + " nor uses up a load");
            }
        }
    }

    /** Minutes of all planters. */
    double minutes() {
        return evidence.all(Activity.Planting.class).stream()
                        .mapToLong(done -> secondsPast(done.machine(), done.activity()))
                        .sum()
                / (double) MINUTE_S;
    }

    /** Whether an activity is planting that goes past the day's last hours, as far as its planter may. */
    boolean isWithin(String machine, Activity activity) {
        return activity instanceof Activity.Planting plant && secondsPast(machine, plant) > 0;
    }

    /** Whether an activity is the flush that ends a day of which planting went on past the hours, itself in the same bounds. */
    boolean isFlushAfter(String machine, Activity before, Activity activity) {
        Applicator planter = evidence.planters.get(machine);
        if (planter == null
                || !(activity instanceof Activity.Flush)
                || !(before instanceof Activity.Planting plant && isWithin(machine, plant))) {
            return false;
        }
        long end = evidence.end(activity);
        return evidence.start(activity) == evidence.end(plant)
                && end <= (evidence.end(plant) - 1) / DAY_S * DAY_S + DAY_S
                && end - evidence.end(plant) <= planter.flushS()
                && evidence.calendar.isUp(machine, evidence.end(plant), end);
    }

    /** 0 where it does not go past the day's last hours, or farther than the planter may. */
    private long secondsPast(String machine, Activity.Planting plant) {
        Applicator planter = evidence.planters.get(machine);
        if (planter == null || planter.overtimeS() == 0) {
            return 0;
        }
        long end = evidence.end(plant);
        OptionalLong dayEnd = dayEnd(planter, plant);
        if (dayEnd.isEmpty() || end <= dayEnd.getAsLong()) {
            return 0;
        }
        long midnight = ((dayEnd.getAsLong() - 1) / DAY_S + 1) * DAY_S;
        long from = Math.max(dayEnd.getAsLong(), evidence.start(plant));
        boolean allowed = end <= Math.min(midnight, dayEnd.getAsLong() + planter.overtimeS())
                && work(planter).stream().noneMatch(hours -> hours.overlap(from, end) > 0)
                && evidence.calendar.isUp(machine, from, end);
        return allowed ? end - from : 0;
    }

    /** The end of the last hours of the day in which the planting begins, or was under way when the plan begins. */
    private OptionalLong dayEnd(Applicator planter, Activity.Planting plant) {
        long start = evidence.start(plant);
        long clock = WorkingDays.lastWorkEnd(planter);
        long dayEndAtStart = start / DAY_S * DAY_S + clock;
        if (isUnderWay(plant) && dayEndAtStart <= start) {
            boolean isWorked = !evidence.season.closed().contains(plant.start().toLocalDate());
            return isWorked ? OptionalLong.of(dayEndAtStart) : OptionalLong.empty();
        }
        return work(planter).stream()
                .filter(hours -> hours.start() <= start && start < hours.end() && hours.end() % DAY_S == clock % DAY_S)
                .mapToLong(WorkCalendar.Period::end)
                .findFirst();
    }

    private boolean isUnderWay(Activity.Planting planting) {
        return planting instanceof Activity.Plant plant
                && evidence.carried.now().filter(plant.start()::equals).isPresent()
                && evidence.season.standing().stream()
                        .flatMap(standing -> standing.planters().values().stream())
                        .flatMap(planter -> planter.tank().stream())
                        .anyMatch(tank -> tank.load().equals(plant.load()));
    }

    private List<WorkCalendar.Period> work(Applicator planter) {
        return evidence.days.work(planter);
    }

    private boolean finishesField(Activity.Planting plant) {
        boolean isLeft = evidence.plan.unserved().stream()
                .anyMatch(unserved -> unserved.field().equals(plant.field()));
        return !isLeft
                && evidence.all(Activity.Planting.class).stream()
                        .map(Evidence.Done::activity)
                        .noneMatch(other -> other.field().equals(plant.field())
                                && !other.start().isBefore(plant.end()));
    }

    private boolean usesUpLoad(Evidence.Done<Activity.Planting> done) {
        return done.activity() instanceof Activity.Plant last
                && evidence.all(Activity.Plant.class).stream()
                        .map(Evidence.Done::activity)
                        .noneMatch(other -> other.load().equals(last.load())
                                && !other.start().isBefore(last.end()));
    }
}
