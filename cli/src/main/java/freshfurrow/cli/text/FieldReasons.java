package freshfurrow.cli.text;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.util.HashMap;
import java.util.Map;

/** Why fields are planted late, not in whole, or not on the day that they are fixed to. */
public final class FieldReasons {
    private FieldReasons() {}

    /** A sentence without a stop for each such field, by the field's id. */
    public static Map<String, String> of(Season season, Plan plan) {
        Map<String, String> reasons = new HashMap<>();
        LateField.of(season, plan).forEach(late -> add(reasons, late.field().id(), late.why()));
        FixedField.of(season, plan).forEach(fixed -> fixed.broken()
                .ifPresent(why -> add(reasons, fixed.field().id(), why)));
        plan.unserved().forEach(left -> add(reasons, left.field(), left.why()));
        return reasons;
    }

    /** What is fixed of a field, and whether a plan keeps it, as a sentence. */
    public static String fixed(Season season, Plan plan, Field field) {
        String words = FixedField.of(season, plan).stream()
                .filter(fixed -> fixed.field().equals(field))
                .findFirst()
                .flatMap(FixedField::broken)
                .orElseGet(() -> FixedField.words(field.fixed()));
        return "F" + words.substring(1);
    }

    private static void add(Map<String, String> reasons, String field, String why) {
        reasons.merge(field, why, (first, more) -> first + "; " + more);
    }
}
