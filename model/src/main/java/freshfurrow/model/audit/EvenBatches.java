package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Rig;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** The batches that a rig makes for one load or mix: all alike, and as few as the drum allows. */
final class EvenBatches {
    private static final double GRAM_KG = 0.001;

    private final Evidence evidence;

    EvenBatches(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        Set<String> made = evidence.all(Activity.Extract.class).stream()
                .map(done -> done.activity().batch())
                .collect(Collectors.toCollection(HashSet::new));
        Set<List<String>> mixes = new LinkedHashSet<>();
        evidence.loads
                .values()
                .forEach(load ->
                        mixes.add(load.batches().stream().filter(made::contains).toList()));
        mixes.forEach(mix -> compare(
                mix.stream().map(evidence.batches::get).filter(Objects::nonNull).toList()));
    }

    private void compare(List<Plan.Batch> mix) {
        if (mix.size() < 2) {
            return;
        }
        List<Double> kilograms =
                mix.stream().map(Plan.Batch::compostKg).sorted().toList();
        double least = kilograms.get(0);
        double most = kilograms.get(kilograms.size() - 1);
        String where = "batch " + mix.get(0).id();
        if (most - least > GRAM_KG + 2 * Evidence.ROUNDING) {
            evidence.report(
                    Rule.EVEN_BATCHES,
                    where,
                    "it and the others of its mix take from " + Evidence.show(least) + " to " + Evidence.show(most)
                            + " kg");
        }
        Rig rig = evidence.rigs.get(mix.get(0).rig());
        double all = kilograms.stream().mapToDouble(Double::doubleValue).sum();
        if (rig != null && all <= (mix.size() - 1) * (rig.batchCompostKg() - 2 * Evidence.ROUNDING)) {
            evidence.report(
                    Rule.EVEN_BATCHES,
                    where,
                    "its mix takes " + Evidence.show(all) + " kg in " + mix.size() + " batches, fewer would do");
        }
    }
}
