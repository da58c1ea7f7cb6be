package freshfurrow.model.progress;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The loads of a plan with what is planted out of them. */
final class PlannedLoads {
    private final Plan plan;
    private final Map<String, Double> plantedHa = new HashMap<>();

    PlannedLoads(Plan plan) {
        this.plan = plan;
        plan.planters().values().forEach(planter -> planter.activities().stream()
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .forEach(plant -> plantedHa.merge(plant.load(), plant.areaHa(), Double::sum)));
    }

    /** What the plan plants out of a load, ha. */
    double plantedHa(String load) {
        return plantedHa.getOrDefault(load, 0.0);
    }

    Plan.Load load(String id) {
        return plan.loads().stream()
                .filter(load -> load.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no load " + id));
    }

    /** Loads made of a batch, in the order of their transfers. */
    List<Plan.Load> of(String batch) {
        List<Plan.Load> loads = plan.loads().stream()
                .filter(load -> load.batches().contains(batch))
                .toList();
        if (loads.isEmpty()) {
            throw new IllegalArgumentException("batch " + batch + " is not used in any load");
        }
        return loads;
    }

    Plan.Batch batch(String id) {
        return plan.batches().stream()
                .filter(batch -> batch.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no batch " + id));
    }
}
