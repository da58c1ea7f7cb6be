package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Standing;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Every batch: what goes into the drum, how long it takes, where it is made, and the cleaning after it. */
final class Batches {
    /** So little is left to a full batch rather than made in one of its own. */
    private static final double GRAM_KG = 0.001;

    private final Evidence evidence;

    Batches(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        Map<String, Set<String>> usedAt = placesOfUse();
        for (Evidence.Done<Activity.Extract> done : evidence.all(Activity.Extract.class)) {
            Plan.Batch batch = evidence.batches.get(done.activity().batch());
            Rig rig = evidence.rigs.get(done.machine());
            if (batch != null) {
                record(batch, done.activity());
            }
            if (batch != null && rig != null) {
                place(batch, done.activity(), rig, usedAt.getOrDefault(batch.id(), Set.of()));
                time(batch, done.activity(), rig);
            }
        }
        for (Plan.Batch batch : evidence.batches.values()) {
            Rig rig = evidence.rigs.get(batch.rig());
            if (rig != null) {
                drum(batch, rig);
            }
        }
        evidence.plan.rigs().forEach((id, its) -> {
            Rig rig = evidence.rigs.get(id);
            if (rig != null) {
                cleaning(
                        rig,
                        its.activities(),
                        evidence.carried.rig(id).map(Standing.OfRig::cleanDue).orElse(false));
            }
        });
    }

    private Map<String, Set<String>> placesOfUse() {
        Map<String, Set<String>> places = new HashMap<>();
        for (Evidence.Done<Activity.Transfer> done : evidence.all(Activity.Transfer.class)) {
            Plan.Load load = evidence.loads.get(done.activity().load());
            if (load != null) {
                load.batches().forEach(batch -> places.computeIfAbsent(batch, any -> new HashSet<>())
                        .add(done.activity().at()));
            }
        }
        return places;
    }

    private void record(Plan.Batch batch, Activity.Extract extract) {
        if (!(batch.start().equals(extract.start()) && batch.end().equals(extract.end()))) {
            report(
                    Rule.BATCH_RECORD,
                    batch,
                    "it says " + batch.start() + " to " + batch.end() + ", the rig extracts it from " + extract.start()
                            + " to " + extract.end());
        }
    }

    private void place(Plan.Batch batch, Activity.Extract extract, Rig rig, Set<String> usedAt) {
        boolean right = rig.extractAt() == ExtractAt.WATER
                ? evidence.waterPoints.containsKey(extract.at())
                : usedAt.stream().allMatch(extract.at()::equals);
        if (!right) {
            report(
                    Rule.BATCH_PLACE,
                    batch,
                    "it is made at " + extract.at()
                            + (rig.extractAt() == ExtractAt.WATER
                                    ? ", which is not a water point"
                                    : ", but transferred at " + String.join(", ", usedAt)));
        }
    }

    private void drum(Plan.Batch batch, Rig rig) {
        if (!(batch.compostKg() > 0 && batch.compostKg() <= rig.batchCompostKg() + GRAM_KG + 2 * Evidence.ROUNDING)) {
            report(
                    Rule.BATCH_COMPOST,
                    batch,
                    "it takes " + Evidence.show(batch.compostKg()) + " kg, a batch of " + rig.id() + " at most "
                            + Evidence.show(rig.batchCompostKg()) + " kg");
        }
        double share = batch.compostKg() / rig.batchCompostKg();
        double perKgRounding = 2 * Evidence.ROUNDING / rig.batchCompostKg();
        double water = share * rig.drumL();
        if (!(Evidence.same(batch.waterL(), water, 2 * Evidence.ROUNDING + perKgRounding * rig.drumL())
                && batch.waterL() <= rig.drumL() + 2 * Evidence.ROUNDING)) {
            report(
                    Rule.BATCH_WATER,
                    batch,
                    "its share of the drum is " + Evidence.show(water) + " L, it takes " + Evidence.show(batch.waterL())
                            + " L");
        }
    }

    /** Batches made before the plan took what they took. */
    private void time(Plan.Batch batch, Activity.Extract extract, Rig rig) {
        double share = batch.compostKg() / rig.batchCompostKg();
        double rounding = 2 * Evidence.ROUNDING / rig.batchCompostKg() * rig.batchTimeS() + Evidence.SECOND_ROUNDING;
        double least = Math.max(share * rig.batchTimeS() - rounding, rig.leastBatchTimeS());
        long taken = evidence.lasts(extract);
        if (!(taken >= least)) {
            report(
                    Rule.BATCH_TIME,
                    batch,
                    "its share of the batch time is " + Evidence.show(share * rig.batchTimeS())
                            + " s, and no batch takes less than " + rig.leastBatchTimeS() + " s, it takes " + taken
                            + " s");
        }
    }

    private void cleaning(Rig rig, List<Activity> activities, boolean due) {
        boolean clean = !due || rig.cleanTimeS() == 0;
        for (Activity activity : activities) {
            if (activity instanceof Activity.Clean) {
                clean |= evidence.lasts(activity) >= rig.cleanTimeS();
            } else if (activity instanceof Activity.Extract extract) {
                if (!clean) {
                    evidence.report(
                            Rule.CLEANING,
                            "batch " + extract.batch(),
                            rig.id() + " was not cleaned for " + rig.cleanTimeS() + " s after the batch before it");
                }
                clean = rig.cleanTimeS() == 0;
            }
        }
    }

    private void report(Rule rule, Plan.Batch batch, String what) {
        evidence.report(rule, "batch " + batch.id(), what);
    }
}
