package freshfurrow.desk.planning;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.PlanTotals;
import freshfurrow.desk.server.Json;
import freshfurrow.model.plan.Plan;

/** A plan in sums, as everywhere else they are told. */
public final class PlanData {
    private PlanData() {}

    public static ObjectNode of(Plan plan) {
        PlanTotals totals = PlanTotals.of(plan);
        ObjectNode data = Json.object();
        ArrayNode lines = data.putArray("totals");
        totals.lines().forEach(line -> lines.addObject()
                .put("name", name(line))
                .put("amount", line.amount())
                .put("figure", line.figure()));
        totals.proved().ifPresent(what -> data.put("proved", what));
        return data;
    }

    /** Beside one another in a table, what is late and what that costs need two names. */
    private static String name(PlanTotals.Line line) {
        return line.isOfBill() ? "Bill: " + line.name().strip() : line.name();
    }
}
