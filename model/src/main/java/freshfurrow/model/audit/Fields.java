package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.HashMap;
import java.util.Map;

/** Whether every field is planted once, or said to be left out and why. */
final class Fields {
    private final Evidence evidence;

    Fields(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        areas();
        reasons();
    }

    private void areas() {
        Map<String, Double> accounted = new HashMap<>();
        evidence.all(Activity.Planting.class)
                .forEach(done ->
                        accounted.merge(done.activity().field(), done.activity().areaHa(), Double::sum));
        evidence.plan.unserved().forEach(left -> accounted.merge(left.field(), left.areaHa(), Double::sum));
        evidence.fields.forEach((id, field) -> {
            double sum = accounted.getOrDefault(id, 0.0);
            if (!Evidence.same(sum, field.areaHa(), Evidence.AREA_ROUNDING_HA)) {
                evidence.report(
                        Rule.FIELD_AREA,
                        "field " + id,
                        "it has " + Evidence.show(field.areaHa()) + " ha, planted and unplanted add up to "
                                + Evidence.show(sum) + " ha");
            }
        });
    }

    private void reasons() {
        for (Plan.Unserved left : evidence.plan.unserved()) {
            if (!(left.areaHa() > 0) || left.why().isBlank()) {
                evidence.report(
                        Rule.UNPLANTED_REASON,
                        "field " + left.field(),
                        left.why().isBlank()
                                ? "it is unplanted without a reason"
                                : "it is unplanted with no area left");
            }
        }
    }
}
