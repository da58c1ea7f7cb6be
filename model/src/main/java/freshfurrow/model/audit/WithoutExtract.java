package freshfurrow.model.audit;

import static freshfurrow.model.quantity.Factors.M2_PER_HA;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Field;
import java.util.List;
import java.util.Set;

/** Whether fields are planted without extract where that is allowed and said, and no planter waits for a rig instead for too long. */
final class WithoutExtract {
    /** Less is not begun. */
    private static final double LEAST_HA = 0.01;

    private static final Set<WaitReason> FOR_A_RIG = Set.of(WaitReason.RIG, WaitReason.WATER);

    private final Evidence evidence;
    private final boolean isAllowed;

    WithoutExtract(Evidence evidence) {
        this.evidence = evidence;
        isAllowed = evidence.season.goals().untreatedDays().isPresent();
    }

    void check() {
        evidence.plan.planters().forEach((id, its) -> {
            decided(id, its);
            Applicator planter = evidence.planters.get(id);
            if (isAllowed && planter != null && planter.longestWaitS().isPresent()) {
                waits(planter, its.activities());
            }
        });
        evidence.all(Activity.PlantWithout.class).stream()
                .filter(done -> !mayGoWithout(done.activity().field()))
                .forEach(done -> evidence.report(
                        Rule.WITHOUT_EXTRACT,
                        done.where(),
                        "it plants " + done.activity().field() + " without extract, which the season does not allow"));
    }

    private boolean mayGoWithout(String id) {
        Field field = evidence.fields.get(id);
        return field == null || evidence.season.mayGoWithout(field);
    }

    private void decided(String planter, Plan.PlanterPlan its) {
        for (String field : its.withoutExtract()) {
            if (!mayGoWithout(field) || !its.fields().contains(field)) {
                evidence.report(
                        Rule.WITHOUT_EXTRACT,
                        "planting order of " + planter,
                        field + " is to be planted without extract, but "
                                + (mayGoWithout(field) ? "is not in the order" : "the season does not allow that"));
            }
        }
        its.activities().stream()
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .filter(plant -> its.withoutExtract().contains(plant.field()))
                .forEach(plant -> evidence.report(
                        Rule.WITHOUT_EXTRACT,
                        new Evidence.Done<>(planter, plant).where(),
                        plant.field() + " is to be planted without extract, and gets load " + plant.load()));
    }

    /** Waits in a row count as one, also with a drive between them. */
    private void waits(Applicator planter, List<Activity> activities) {
        long waitedS = 0;
        boolean couldPlant = false;
        for (Activity activity : activities) {
            if (activity instanceof Activity.Wait wait && FOR_A_RIG.contains(wait.why())) {
                waitedS += workingS(planter, wait);
                couldPlant |= couldPlant(planter, wait);
                if (couldPlant && waitedS > planter.longestWaitS().getAsInt()) {
                    evidence.report(
                            Rule.LONGEST_WAIT,
                            new Evidence.Done<>(planter.id(), wait).where(),
                            "it waits " + waitedS + " s for a rig, longer than its longest wait of "
                                    + planter.longestWaitS().getAsInt() + " s");
                }
            } else if (!(activity instanceof Activity.Move)) {
                waitedS = 0;
                couldPlant = false;
            }
        }
    }

    private long workingS(Applicator planter, Activity.Wait wait) {
        return evidence.days.work(planter).stream()
                .mapToLong(work -> work.overlap(evidence.start(wait), evidence.end(wait)))
                .sum();
    }

    /** Whether more than next to nothing could be planted meanwhile where it stands, in one piece. */
    private boolean couldPlant(Applicator planter, Activity.Wait wait) {
        Field field = evidence.fields.get(wait.at());
        long leastS = (long) Math.ceil(LEAST_HA * M2_PER_HA / planter.fieldCapacityM2PerS());
        long start = evidence.start(wait);
        long end = evidence.end(wait);
        return field != null
                && evidence.days.work(planter).stream()
                        .filter(work -> work.overlap(start, end) > leastS)
                        .anyMatch(work -> evidence.calendar.wet(field).stream()
                                .noneMatch(wet ->
                                        wet.overlap(Math.max(start, work.start()), Math.min(end, work.end())) > 0));
    }
}
