package freshfurrow.model.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is decided of a plan; all else follows from it.
 *
 * @param byPlanter ids of the fields that each planter plants, in their order
 * @param withoutExtract ids of those of them that are planted without extract
 */
public record PlantingOrders(List<List<String>> byPlanter, Set<String> withoutExtract) {
    public PlantingOrders {
        byPlanter = byPlanter.stream().map(List::copyOf).toList();
        withoutExtract = Set.copyOf(withoutExtract);
    }

    /** Orders in which all fields get extract. */
    public static PlantingOrders withExtract(List<List<String>> byPlanter) {
        return new PlantingOrders(byPlanter, Set.of());
    }

    /** Those of a plan, in the order of its planters. */
    public static PlantingOrders of(Plan plan) {
        return new PlantingOrders(
                plan.planters().values().stream().map(Plan.PlanterPlan::fields).toList(), plan.withoutExtract());
    }

    /**
     * Those of a plan.
     *
     * @param machines ids in the season's order; those that the plan does not know have nothing to do in it
     */
    public static PlantingOrders of(Plan plan, List<String> machines) {
        return of(plan).with(machines.stream()
                .map(id -> Optional.ofNullable(plan.planters().get(id))
                        .map(Plan.PlanterPlan::fields)
                        .orElse(List.of()))
                .toList());
    }

    /** Other orders of the same planters, with the same fields without extract. */
    public PlantingOrders with(List<List<String>> others) {
        return new PlantingOrders(others, withoutExtract);
    }
}
