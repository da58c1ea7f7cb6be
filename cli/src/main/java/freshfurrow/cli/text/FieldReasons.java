package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.HashMap;
import java.util.Map;

/** Why fields are planted late or not in whole. */
public final class FieldReasons {
    private FieldReasons() {}

    /** A sentence without a stop for each field that is late or not planted in whole, by the field's id. */
    public static Map<String, String> of(Season season, Plan plan) {
        Map<String, String> reasons = new HashMap<>();
        LateField.of(season, plan).forEach(late -> add(reasons, late.field().id(), late.why()));
        plan.unserved().forEach(left -> add(reasons, left.field(), left.why()));
        return reasons;
    }

    private static void add(Map<String, String> reasons, String field, String why) {
        reasons.merge(field, why, (first, more) -> first + "; " + more);
    }
}
