package freshfurrow.model.progress;

import freshfurrow.model.log.Fact;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The loads of a plan with what is planted out of them. */
final class PlannedLoads {
    private final Map<String, Plan.Load> loads = new HashMap<>();
    private final Map<String, Plan.Batch> batches = new HashMap<>();
    private final Map<String, List<Plan.Load>> loadsOfBatch = new HashMap<>();
    private final Map<String, Double> plantedHa = new HashMap<>();

    PlannedLoads(Plan plan) {
        for (Plan.Load load : plan.loads()) {
            loads.put(load.id(), load);
            load.batches().stream().distinct().forEach(batch -> loadsOfBatch
                    .computeIfAbsent(batch, id -> new ArrayList<>())
                    .add(load));
        }
        plan.batches().forEach(batch -> batches.put(batch.id(), batch));
        plan.planters().values().forEach(planter -> planter.activities().stream()
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .forEach(plant -> plantedHa.merge(plant.load(), plant.areaHa(), Double::sum)));
    }

    /** What the plan plants out of a load, ha. */
    double plantedHa(String load) {
        return plantedHa.getOrDefault(load, 0.0);
    }

    /** What of a load is planted, and what was to be but turned out to get too old, ha. */
    double ha(Plan.Load load, Season season) {
        return plantedHa(load.id())
                + load.dumpedL() / season.recipe(load.recipe()).mixLPerHa();
    }

    Plan.Load load(String id) {
        return found(loads, id, "no load ");
    }

    /** Loads made of a batch, in the order of their transfers. */
    List<Plan.Load> of(String batch) {
        return found(loadsOfBatch, batch, "no load made of batch ");
    }

    Plan.Batch batch(String id) {
        return found(batches, id, "no batch ");
    }

    /** That a rig drew water or made a batch, as the plan has it; empty for all else that rigs do. */
    Optional<Fact> rigFact(String rig, Activity activity) {
        if (activity instanceof Activity.Draw draw) {
            return Optional.of(new Fact.WaterDrawn(draw.at(), rig, draw.litres()));
        }
        if (activity instanceof Activity.Extract extract) {
            List<String> into = of(extract.batch()).stream().map(Plan.Load::id).toList();
            return Optional.of(new Fact.BatchMade(rig, batch(extract.batch()).lots(), into, Optional.of(extract.at())));
        }
        return Optional.empty();
    }

    /** That so much of a planting was done, ha. */
    static Fact.Planted planted(String planter, Activity.Planting planting, double ha) {
        Optional<String> load = planting instanceof Activity.Plant plant ? Optional.of(plant.load()) : Optional.empty();
        return new Fact.Planted(planting.field(), ha, Optional.of(planter), load, load.isEmpty());
    }

    private static <T> T found(Map<String, T> byId, String id, String none) {
        T found = byId.get(id);
        if (found == null) {
            throw new IllegalArgumentException(none + id);
        }
        return found;
    }
}
