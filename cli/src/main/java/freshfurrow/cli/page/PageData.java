package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.SeasonTime;
import freshfurrow.model.season.WorkHours;
import java.util.List;

/** Everything the page's scripts draw, as one tree. */
final class PageData {
    private PageData() {}

    static JsonNode of(Season season, Plan plan, List<String> changes) {
        PlacePositions positions = new PlacePositions(season, plan);
        SeasonTime time = season.time();
        ObjectNode data = JsonNodeFactory.instance.objectNode();
        SeasonData.write(data, season, plan, time);
        WordsData.write(data, plan);
        FieldData.write(data, season, plan, time);
        machines(data, season, plan, new MachineData(positions, time));
        LoadData.write(data, plan, positions, time);
        WaysData.write(data, season, plan, positions);
        Ledger.write(data, season, plan);
        LimitsData.write(data, season, plan);
        CautionData.write(data, season, plan, time);
        data.put("changes", String.join("\n", changes));
        return data;
    }

    private static void machines(ObjectNode data, Season season, Plan plan, MachineData machines) {
        ArrayNode planters = data.putArray("planters");
        for (Applicator planter : season.applicators()) {
            Plan.PlanterPlan planned = plan.planters().get(planter.id());
            if (planned != null) {
                ObjectNode machine = machine(planters, planter.id(), planter.hours())
                        .put("work", planter.work().key());
                planter.on().ifPresent(rig -> machine.put("on", rig));
                machine.set("activities", machines.activities(planned.activities()));
            }
        }
        ArrayNode rigs = data.putArray("rigs");
        for (Rig rig : season.rigs()) {
            Plan.RigPlan planned = plan.rigs().get(rig.id());
            if (planned != null) {
                machine(rigs, rig.id(), rig.hours()).set("activities", machines.activities(planned.activities()));
            }
        }
    }

    private static ObjectNode machine(ArrayNode machines, String id, WorkHours hours) {
        ObjectNode machine = machines.addObject().put("id", id);
        ArrayNode spans = machine.putArray("hours");
        hours.spans().forEach(span -> spans.addArray().add(span.startS()).add(span.endS()));
        return machine;
    }
}
