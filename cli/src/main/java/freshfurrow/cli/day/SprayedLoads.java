package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The loads that a rig sprays itself.
 *
 * @param loads their ids
 * @param pieces what is sprayed of them, with the litres that takes
 * @param carriedL what of them is in the tank when the plan begins
 */
record SprayedLoads(Set<String> loads, List<Piece> pieces, double carriedL) {
    /** A part of one, L, and when it is sprayed. */
    record Piece(LocalDateTime end, double litres) {}

    static SprayedLoads of(Plan plan, String rig) {
        Map<String, Plan.Load> loads = plan.loads().stream()
                .filter(load -> plan.planters().containsKey(load.planter()))
                .filter(load -> PlanIndex.crewOf(plan, load.planter()).equals(rig))
                .collect(Collectors.toMap(Plan.Load::id, load -> load, (one, other) -> one));
        List<Activity.Plant> plants = plan.planters().values().stream()
                .flatMap(planter -> planter.activities().stream())
                .filter(Activity.Plant.class::isInstance)
                .map(Activity.Plant.class::cast)
                .filter(plant -> loads.containsKey(plant.load()))
                .toList();
        Map<String, Double> areas = plants.stream()
                .collect(Collectors.groupingBy(Activity.Plant::load, Collectors.summingDouble(Activity.Plant::areaHa)));
        List<Piece> pieces = plants.stream()
                .map(plant -> new Piece(
                        plant.end(), loads.get(plant.load()).appliedL() * plant.areaHa() / areas.get(plant.load())))
                .toList();
        Set<String> filled = plan.rigs().get(rig).activities().stream()
                .filter(Activity.Transfer.class::isInstance)
                .map(activity -> ((Activity.Transfer) activity).load())
                .collect(Collectors.toCollection(HashSet::new));
        double carriedL = loads.values().stream()
                .filter(load -> !filled.contains(load.id()))
                .mapToDouble(Plan.Load::appliedL)
                .sum();
        return new SprayedLoads(Set.copyOf(loads.keySet()), pieces, carriedL);
    }

    /** Whether an activity is a transfer of one, which stays on board. */
    boolean isTransferOf(Activity activity) {
        return activity instanceof Activity.Transfer transfer && loads.contains(transfer.load());
    }
}
