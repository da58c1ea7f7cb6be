package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.Caution;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.List;
import java.util.stream.Stream;

/** Cautions for the work of the plan. */
final class CautionData {
    private CautionData() {}

    static void write(ObjectNode data, Plan plan) {
        List<Activity> work = Stream.concat(
                        plan.planters().values().stream().flatMap(planter -> planter.activities().stream()),
                        plan.rigs().values().stream().flatMap(rig -> rig.activities().stream()))
                .toList();
        data.put("firstOfAll", Caution.FIRST);
        var cautions = data.putArray("cautions");
        Caution.of(work).forEach(caution -> cautions.add(caution.text()));
    }
}
