package freshfurrow.app.trial;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

/** By which machine a field is begun, and on which day. */
public record Begun(String machine, LocalDate day) {
    /** Of each field of a plan that is begun in it or gone on with. */
    static Map<String, Begun> inPlan(Plan plan) {
        Map<String, Begun> begun = new LinkedHashMap<>();
        plan.planters().forEach((machine, its) -> its.activities().forEach(activity -> {
            if (activity instanceof Activity.Planting planting) {
                begun.putIfAbsent(
                        planting.field(), new Begun(machine, planting.start().toLocalDate()));
            }
        }));
        return begun;
    }
}
