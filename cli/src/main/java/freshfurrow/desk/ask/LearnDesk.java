package freshfurrow.desk.ask;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.learn.Learned;
import freshfurrow.app.learn.LearnedVariant;
import freshfurrow.app.log.LogOrder;
import freshfurrow.cli.words.LessonsText;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import java.util.Optional;

/** What the log teaches, and the variant that is made of it. */
public final class LearnDesk implements Part {
    /** Beside the season file. */
    private static final String VARIANT = "learned.yaml";

    private final DeskSeason season;

    public LearnDesk(DeskSeason season) {
        this.season = season;
    }

    @Override
    public void answers(Routes routes) {
        routes.get("/api/learn", Role.OWNER, request -> lessons());
        routes.post("/api/learn/variant", Role.OWNER, (order, by) -> write(order));
    }

    private Learned learned() {
        return Learned.by(
                new LogOrder(
                        season.given(),
                        Optional.empty(),
                        Optional.of(new GivenPlan(season.planFolder())),
                        true,
                        Optional.empty()),
                season.clock());
    }

    /** The report, and the values that a form may set. */
    private JsonNode lessons() {
        Learned learned = learned();
        ObjectNode answer = Json.object();
        answer.put("entries", learned.entries());
        answer.set("lines", Json.list(new LessonsText(learned).lines()));
        ArrayNode values = answer.putArray("values");
        learned.values()
                .forEach(value -> values.addObject().put("text", value.text()).set("path", Json.list(value.path())));
        return answer;
    }

    private JsonNode write(JsonNode order) {
        LearnedVariant.write(
                learned(),
                season.given().folder().resolve(VARIANT),
                order.path("replace").asBoolean(false));
        return Json.object().put("file", VARIANT);
    }
}
