package freshfurrow.desk.ask;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.plan.WhyField;
import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.HeldBack;
import freshfurrow.cli.why.WhyReport;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import freshfurrow.desk.server.Unanswered;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.text.FieldLabel;
import io.javalin.http.Context;
import java.nio.file.Files;
import java.util.Optional;

/** Questions about the plan that is followed. */
public final class AskDesk implements Part {
    private final DeskSeason season;

    public AskDesk(DeskSeason season) {
        this.season = season;
    }

    @Override
    public void answers(Routes routes) {
        routes.get("/api/ask", Role.OWNER, request -> questions());
        routes.get("/api/why", Role.OWNER, this::why);
    }

    /** What there is to ask about. */
    private JsonNode questions() {
        ObjectNode answer = Json.object();
        if (!Files.exists(season.plan().file())) {
            return answer;
        }
        Plan plan = season.plan().read();
        ArrayNode fields = answer.putArray("fields");
        plan.planters().values().stream()
                .flatMap(planter -> planter.fields().stream())
                .distinct()
                .sorted()
                .forEach(id -> field(fields, plan, id));
        plan.unserved().stream()
                .map(Plan.Unserved::field)
                .filter(id -> plan.planters().values().stream()
                        .noneMatch(planter -> planter.fields().contains(id)))
                .forEach(id -> field(fields, plan, id));
        answer.set(
                "heldBack",
                Json.list(HeldBack.lines(plan).stream()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty())
                        .toList()));
        ArrayNode days = answer.putArray("days");
        MachineDay.withOrders(plan).stream().map(MachineDay::date).distinct().forEach(date -> days.addObject()
                .put("date", date.toString())
                .put("name", Figures.day(date)));
        return answer;
    }

    private static void field(ArrayNode fields, Plan plan, String id) {
        fields.addObject()
                .put("id", id)
                .put(
                        "label",
                        FieldLabel.of(
                                id,
                                Optional.ofNullable(plan.season().names().get(id))
                                        .orElse(id)));
    }

    private JsonNode why(Context request) {
        String field = Optional.ofNullable(request.queryParam("field"))
                .orElseThrow(() -> Unanswered.senseless("No field is named."));
        return Json.object()
                .set("lines", Json.list(WhyReport.lines(WhyField.of(season.plan(), season.ofPlan(), field))));
    }
}
