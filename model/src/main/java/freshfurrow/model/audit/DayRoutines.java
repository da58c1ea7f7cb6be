package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.season.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

/** What machines begin and end their days with. */
final class DayRoutines {
    private final Evidence evidence;

    DayRoutines(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        evidence.plan.rigs().forEach((id, its) -> {
            Rig rig = evidence.rigs.get(id);
            if (rig != null) {
                days(
                        rig,
                        evidence.rigsThatSpray.contains(id)
                                ? Mounted.all(evidence, id).stream()
                                        .map(Evidence.Done::activity)
                                        .toList()
                                : its.activities());
            }
        });
    }

    private void days(Rig rig, List<Activity> activities) {
        Map<Long, List<Activity>> days = new TreeMap<>();
        activities.stream().filter(activity -> evidence.lasts(activity) > 0).forEach(activity -> days.computeIfAbsent(
                        WorkingDays.day(rig.hours(), evidence.start(activity)), any -> new ArrayList<>())
                .add(activity));
        OptionalLong begun = evidence.days.begun(rig);
        days.forEach((day, its) -> {
            if (rig.setUpS() > 0) {
                setUp(rig, its, begun.isPresent() && begun.getAsLong() == day);
            }
            if (rig.closeUpS() > 0) {
                closeUp(rig, its);
            }
        });
        if (begun.isPresent() && rig.closeUpS() > 0 && !days.containsKey(begun.getAsLong())) {
            closedUpWithoutWork(rig, begun.getAsLong());
        }
    }

    private void setUp(Rig rig, List<Activity> day, boolean begun) {
        Activity first = day.get(0);
        if (!begun && !(first instanceof Activity.SetUp)) {
            report(Rule.SET_UP, rig, first, "this is its first work of the day, and it is not set up for it");
        }
        for (Activity activity : day) {
            if (activity instanceof Activity.SetUp) {
                if (begun || activity != first) {
                    report(Rule.SET_UP, rig, activity, "it is set up, but that is not its first work of the day");
                }
                if (evidence.lasts(activity) < rig.setUpS()) {
                    report(
                            Rule.SET_UP,
                            rig,
                            activity,
                            "setting up takes " + rig.setUpS() + " s, not " + evidence.lasts(activity) + " s");
                }
            }
        }
    }

    private void closeUp(Rig rig, List<Activity> day) {
        Activity last = day.get(day.size() - 1);
        if (!(last instanceof Activity.CloseUp)) {
            report(Rule.CLOSE_UP, rig, last, "this is its last work of the day, and it is not closed up after it");
        }
        for (Activity activity : day) {
            if (activity instanceof Activity.CloseUp) {
                if (activity != last) {
                    report(Rule.CLOSE_UP, rig, activity, "it is closed up, but that is not its last work of the day");
                }
                if (evidence.lasts(activity) < rig.closeUpS()) {
                    report(
                            Rule.CLOSE_UP,
                            rig,
                            activity,
                            "closing up takes " + rig.closeUpS() + " s, not " + evidence.lasts(activity) + " s");
                }
            }
        }
    }

    /** A rig that was set up before the plan begins and has no more work that day is closed up, where its hours leave time for it. */
    private void closedUpWithoutWork(Rig rig, long day) {
        if (evidence.days.hasTimeLeft(rig, day, rig.closeUpS())) {
            evidence.report(Rule.CLOSE_UP, rig.id(), "it was set up before the plan begins, and is not closed up");
        }
    }

    private void report(Rule rule, Rig rig, Activity activity, String what) {
        evidence.report(rule, new Evidence.Done<>(rig.id(), activity).where(), what);
    }
}
