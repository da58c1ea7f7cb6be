package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A sprayer that is mounted on a rig is that rig: what both do is done by one machine, in one place, one thing at a time. */
final class Mounted {
    private final Evidence evidence;

    Mounted(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        evidence.planters.values().forEach(sprayer -> sprayer.on().ifPresent(rig -> filledByItself(sprayer, rig)));
        evidence.rigs.values().stream()
                .filter(rig -> evidence.rigsThatSpray.contains(rig.id()))
                .forEach(rig -> oneMachine(
                        rig.id(),
                        evidence.carried.rig(rig.id()).map(Standing.OfRig::at).orElse(rig.at())));
    }

    private static boolean isOn(Applicator machine, String rig) {
        return machine.on().filter(rig::equals).isPresent();
    }

    /** What a rig does, and what the sprayers on it do, in time order; a fill of theirs is a transfer of the rig's. */
    static List<Evidence.Done<Activity>> all(Evidence evidence, String rig) {
        List<Evidence.Done<Activity>> all = new ArrayList<>();
        for (Evidence.Done<Activity> done : evidence.activities) {
            var machine = evidence.planters.get(done.machine());
            boolean sprays = machine != null && isOn(machine, rig) && !(done.activity() instanceof Activity.Fill);
            if (sprays || done.machine().equals(rig)) {
                all.add(done);
            }
        }
        all.sort(Comparator.comparing(done -> done.activity().start()));
        return all;
    }

    private void filledByItself(Applicator sprayer, String rig) {
        for (Plan.Load load : evidence.loads.values()) {
            if (load.planter().equals(sprayer.id()) && !load.rig().equals(rig)) {
                evidence.report(
                        Rule.MOUNTED,
                        "load " + load.id(),
                        sprayer.id() + " is mounted on " + rig + ", but this load is from " + load.rig());
            }
        }
    }

    private void oneMachine(String rig, String home) {
        String at = home;
        long free = Long.MIN_VALUE;
        for (Evidence.Done<Activity> done : all(evidence, rig)) {
            Activity activity = done.activity();
            if (evidence.start(activity) < free) {
                report(done, rig, "is still at other work when this " + name(activity) + " starts");
            }
            if (!activity.at().equals(at)) {
                report(done, rig, "stands at " + at + ", and this " + name(activity) + " is at " + activity.at());
            }
            free = Math.max(free, evidence.end(activity));
            at = activity.endsAt();
        }
    }

    private void report(Evidence.Done<Activity> done, String rig, String what) {
        evidence.report(Rule.MOUNTED, done.where(), rig + ", on which a sprayer is mounted, " + what);
    }

    private static String name(Activity activity) {
        return activity.kind().key();
    }
}
