package freshfurrow.model.progress;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a plan tells crews of the days ahead. */
public final class Promises {
    private Promises() {}

    /** By field: the planter and day of the first planting that ends after {@code now}, if it begins within so many days. */
    public static Map<String, Standing.Promise> of(Plan plan, LocalDateTime now, int days) {
        Map<String, Standing.Promise> promises = new LinkedHashMap<>();
        plan.planters().forEach((planter, its) -> its.activities().stream()
                .filter(Activity.Planting.class::isInstance)
                .map(Activity.Planting.class::cast)
                .filter(plant -> plant.end().isAfter(now) && plant.start().isBefore(now.plusDays(days)))
                .forEach(plant -> promises.putIfAbsent(
                        plant.field(),
                        new Standing.Promise(planter, plant.start().toLocalDate()))));
        return promises;
    }

    /** How many promises a plan keeps that begins where they hold. */
    public static long kept(Standing standing, Plan plan) {
        Map<String, Standing.Promise> planned = of(plan, standing.now(), Integer.MAX_VALUE);
        return standing.promised().entrySet().stream()
                .filter(promise -> promise.getValue().equals(planned.get(promise.getKey())))
                .count();
    }
}
