package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.M_PER_KM;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityKind;
import freshfurrow.model.season.Standing;
import freshfurrow.model.season.WorkHours;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** What a machine does: one thing at a time, in its hours, where it is, and no faster on the road than it drives. */
final class MachineRules {
    /** Roads are taken as whole metres. */
    private static final double METRE_KM = 0.001;

    private final Evidence evidence;
    private final Overtime overtime;

    MachineRules(Evidence evidence) {
        this.evidence = evidence;
        this.overtime = new Overtime(evidence);
    }

    void check() {
        evidence.plan.planters().forEach((id, its) -> {
            work(id, its.activities(), ActivityKind::byPlanters);
            var standing = evidence.carried.planter(id);
            order(id, its.activities(), standing.map(Standing.OfPlanter::freeFrom));
            var planter = evidence.planters.get(id);
            if (planter != null) {
                hours(id, id, inHours(id, its.activities()), planter.hours());
                planter.on().ifPresent(rig -> hours(id, rig, its.activities(), planter.hours()));
                if (planter.on().isEmpty()) {
                    places(
                            id,
                            its.activities(),
                            standing.map(Standing.OfPlanter::at).orElse(planter.at()));
                }
                roads(id, its.activities(), planter.roadSpeedMPerS(), planter.moveTimeS());
            }
        });
        evidence.plan.rigs().forEach((id, its) -> {
            work(id, its.activities(), ActivityKind::byRigs);
            var standing = evidence.carried.rig(id);
            order(id, its.activities(), standing.map(Standing.OfRig::freeFrom));
            var rig = evidence.rigs.get(id);
            if (rig != null) {
                hours(id, id, its.activities(), rig.hours());
                if (!evidence.rigsThatSpray.contains(id)) {
                    places(
                            id,
                            its.activities(),
                            standing.map(Standing.OfRig::at).orElse(rig.at()));
                }
                roads(id, its.activities(), rig.roadSpeedMPerS(), 0);
            }
        });
    }

    /** All but what is planted past them as long as the planter may, and the flush after that. */
    private List<Activity> inHours(String planter, List<Activity> activities) {
        return IntStream.range(0, activities.size())
                .filter(i -> !overtime.isWithin(planter, activities.get(i)))
                .filter(i -> i == 0 || !overtime.isFlushAfter(planter, activities.get(i - 1), activities.get(i)))
                .mapToObj(activities::get)
                .toList();
    }

    private void work(String machine, List<Activity> activities, Predicate<ActivityKind> suits) {
        for (Activity activity : activities) {
            if (!suits.test(activity.kind())) {
                report(Rule.MACHINE_WORK, machine, activity, "it is not a machine for a " + name(activity));
            }
        }
    }

    private void order(String machine, List<Activity> activities, Optional<LocalDateTime> freeFrom) {
        long free = freeFrom.map(evidence.calendar::seconds).orElse(Long.MIN_VALUE);
        for (Activity activity : activities) {
            if (activity.end().isBefore(activity.start())) {
                report(Rule.ONE_AT_A_TIME, machine, activity, "this " + name(activity) + " ends before it starts");
            }
            if (evidence.start(activity) < free) {
                report(
                        Rule.ONE_AT_A_TIME,
                        machine,
                        activity,
                        "this " + name(activity) + " starts before the activity ahead of it ends");
            }
            free = Math.max(free, evidence.end(activity));
        }
    }

    /** @param up the machine that has to be up: itself, or the one that it is mounted on */
    private void hours(String machine, String up, List<Activity> activities, WorkHours hours) {
        List<WorkCalendar.Period> periods = evidence.calendar.work(up, hours);
        for (Activity activity : activities) {
            long start = evidence.start(activity);
            long end = evidence.end(activity);
            if (start < 0 || end > evidence.calendar.end()) {
                report(Rule.SEASON_DAYS, machine, activity, "this " + name(activity) + " is outside the season");
            } else if (activity.isWork()
                    && periods.stream().noneMatch(period -> period.contains(start, end))
                    && !isLetOutAfterAllHours(machine, activity)) {
                report(
                        Rule.WORK_HOURS,
                        machine,
                        activity,
                        "this " + name(activity) + ", to " + activity.end() + ", is not in one working period");
            }
        }
    }

    /** Mix is left on a rig when the hours that are left of the season are too short to let it out: that is told in no time. */
    private boolean isLetOutAfterAllHours(String machine, Activity activity) {
        var rig = evidence.rigs.get(machine);
        if (rig == null || !(activity instanceof Activity.Dump dump) || evidence.lasts(dump) > 0) {
            return false;
        }
        double lasts = dump.litres() / rig.transferLPerS() - Evidence.SECOND_ROUNDING;
        return evidence.days.work(rig).stream()
                .noneMatch(period -> period.end() - Math.max(period.start(), evidence.start(dump)) > lasts);
    }

    private void places(String machine, List<Activity> activities, String home) {
        String at = home;
        for (Activity activity : activities) {
            if (!activity.at().equals(at)) {
                report(
                        Rule.PLACE,
                        machine,
                        activity,
                        "this " + name(activity) + " is at " + activity.at() + ", but it stands at " + at);
            }
            at = activity.endsAt();
        }
    }

    private void roads(String machine, List<Activity> activities, double speedMPerS, int moveTimeS) {
        for (Activity activity : activities) {
            if (activity instanceof Activity.Move move) {
                OptionalDouble metres = evidence.metres(move.from(), move.to());
                if (metres.isPresent()) {
                    road(machine, move, metres.getAsDouble(), speedMPerS, moveTimeS);
                }
            }
        }
    }

    private void road(String machine, Activity.Move move, double metres, double speedMPerS, int moveTimeS) {
        if (!Evidence.same(move.km(), metres / M_PER_KM, METRE_KM + Evidence.ROUNDING)) {
            report(
                    Rule.ROAD_DISTANCE,
                    machine,
                    move,
                    "from " + move.from() + " to " + move.to() + " it is " + Evidence.show(metres / M_PER_KM)
                            + " km, not " + Evidence.show(move.km()));
        }
        double least = metres / speedMPerS + (move.from().equals(move.to()) ? 0 : moveTimeS);
        if (evidence.lasts(move) < least - Evidence.SECOND_ROUNDING) {
            report(
                    Rule.ROAD_TIME,
                    machine,
                    move,
                    "from " + move.from() + " to " + move.to() + " it takes at least " + Evidence.show(least)
                            + " s, not " + evidence.lasts(move));
        }
    }

    private void report(Rule rule, String machine, Activity activity, String what) {
        evidence.report(rule, new Evidence.Done<>(machine, activity).where(), what);
    }

    private static String name(Activity activity) {
        return activity.kind().key();
    }
}
