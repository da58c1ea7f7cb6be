package freshfurrow.desk.season;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.editing.Draft;
import freshfurrow.app.editing.EditAnswer;
import freshfurrow.app.editing.SeasonEditing;
import freshfurrow.app.season.CheckedSeason;
import freshfurrow.cli.words.SeasonSummary;
import freshfurrow.desk.server.Events;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import freshfurrow.model.read.Reading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The season in forms: what its files say, what is wrong or missing, and every change that is made. */
public final class SeasonDesk implements Part {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final SeasonEditing editing;
    private final Events events;
    private final SeasonSchema schema = SeasonSchema.read();

    public SeasonDesk(SeasonEditing editing, Events events) {
        this.editing = editing;
        this.events = events;
    }

    @Override
    public void answers(Routes routes) {
        routes.get("/api/season", Role.CREW, request -> state(editing.draft()));
        routes.get("/api/season/name", Role.CREW, request -> name(editing.draft()));
        routes.get("/api/season/sums", Role.OWNER, request -> sums(editing.draft()));
        routes.get("/api/season/schema", Role.OWNER, request -> schema.whole());
        routes.post("/api/season/change", Role.OWNER, (order, by) -> change(order));
        routes.post("/api/season/undo", Role.OWNER, (order, by) -> answer(editing.undo()));
        routes.post("/api/season/redo", Role.OWNER, (order, by) -> answer(editing.redo()));
    }

    /** Does all that the first answer takes, so that whoever asks first need not wait for it. */
    public void readAhead() {
        state(editing.draft());
    }

    /** As the file has it, whatever else is wrong there; none when it has none. */
    private static JsonNode name(Draft draft) {
        JsonNode name = MAPPER.valueToTree(draft.tree()).path("season").path("name");
        return Json.object().put("name", name.asText(""));
    }

    /** Of a season without a problem: what {@code check} says of it. Its distances take longer than all of its forms. */
    private static JsonNode sums(Draft draft) {
        List<String> lines = draft.reading() instanceof Reading.Valid valid
                ? SeasonSummary.lines(CheckedSeason.of(valid.season()))
                : List.of();
        return Json.object().set("sums", Json.list(lines));
    }

    private JsonNode change(JsonNode order) {
        UsualUnits usual = UsualUnits.in(editing.draft().tree(), schema);
        Map<String, String> seen = new LinkedHashMap<>();
        order.path("files")
                .properties()
                .forEach(file -> seen.put(file.getKey(), file.getValue().asText()));
        return answer(editing.apply(new TypedEdits(schema, usual).of(order.path("edits")), seen));
    }

    private JsonNode answer(EditAnswer answer) {
        if (answer instanceof EditAnswer.ChangedMeanwhile changed) {
            throw new ChangedElsewhere(changed);
        }
        ObjectNode state = state(((EditAnswer.Saved) answer).draft());
        events.tell("season", Json.object().set("files", state.get("files")));
        return state;
    }

    private ObjectNode state(Draft draft) {
        ObjectNode state = Json.object();
        state.set("files", MAPPER.valueToTree(draft.digests()));
        state.set("tree", MAPPER.valueToTree(draft.tree()));
        DraftProblems.write(state, draft);
        return state.put("canUndo", editing.canUndo()).put("canRedo", editing.canRedo());
    }
}
