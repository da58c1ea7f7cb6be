package freshfurrow.model.audit;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Standing;
import java.util.List;

/** Whether loads and batches are numbered in order, on from those made before. */
final class NumberRules {
    private final Evidence evidence;

    NumberRules(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        var standing = evidence.season.standing();
        inOrder(
                "load",
                evidence.plan.loads().stream()
                        .map(Plan.Load::id)
                        .filter(id -> evidence.carried.tank(id).isEmpty())
                        .toList(),
                standing.map(Standing::loads).orElse(0));
        inOrder(
                "batch",
                evidence.plan.batches().stream()
                        .map(Plan.Batch::id)
                        .filter(id -> !evidence.carried.isBatch(id))
                        .toList(),
                standing.map(Standing::batches).orElse(0));
    }

    private void inOrder(String kind, List<String> ids, int made) {
        for (int i = 0; i < ids.size(); i++) {
            String number = Integer.toString(made + i + 1);
            if (!ids.get(i).replaceFirst("^[A-Z]0*", "").equals(number)) {
                evidence.report(Rule.NUMBERS, kind + " " + ids.get(i), "it stands where number " + number + " belongs");
                return;
            }
        }
    }
}
