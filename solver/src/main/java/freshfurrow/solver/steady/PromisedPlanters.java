package freshfurrow.solver.steady;

import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import java.util.LinkedHashMap;
import java.util.Map;

/** Which planter was promised to which field of a season for the days ahead: indices in the season's order. */
final class PromisedPlanters {
    private PromisedPlanters() {}

    /** By field. */
    static Map<Integer, Integer> of(Season season) {
        Map<Integer, Integer> planterOf = new LinkedHashMap<>();
        Map<String, Standing.Promise> promised =
                season.standing().map(Standing::promised).orElse(Map.of());
        for (int field = 0; field < season.fields().size(); field++) {
            Standing.Promise promise = promised.get(season.fields().get(field).id());
            for (int p = 0; promise != null && p < season.planters().size(); p++) {
                if (season.planters().get(p).id().equals(promise.planter())) {
                    planterOf.put(field, p);
                }
            }
        }
        return planterOf;
    }
}
