package freshfurrow.desk.begin;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.begin.Answers;
import freshfurrow.app.begin.BegunFiles;
import freshfurrow.app.begin.DrawnFields;
import freshfurrow.app.begin.FieldRow;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.Heading;
import freshfurrow.app.begin.NewSeason;
import freshfurrow.app.begin.PastedTable;
import freshfurrow.app.begin.Section;
import freshfurrow.app.begin.Surroundings;
import freshfurrow.app.begin.UnitSystem;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.input.SeasonClock;
import freshfurrow.app.season.CheckedSeason;
import freshfurrow.cli.words.SeasonSummary;
import freshfurrow.desk.server.Events;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import freshfurrow.desk.server.Unanswered;
import freshfurrow.model.read.Reading;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Begins a season where there is none. */
public final class BeginDesk implements Part {
    /** As much as a map of fields may hold. */
    private static final int MOST_BYTES = 32 << 20;

    private final GivenSeason given;
    private final SeasonClock clock;
    private final Events events;

    public BeginDesk(GivenSeason given, SeasonClock clock, Events events) {
        this.given = given;
        this.clock = clock;
        this.events = events;
    }

    @Override
    public void answers(Routes routes) {
        routes.getByRole("/api/role", by -> Json.object()
                .put("role", by.name())
                .put("begins", by == Role.OWNER && BegunFiles.canBegin(given)));
        routes.get("/api/begin", Role.OWNER, request -> questions());
        routes.post("/api/begin/table", Role.OWNER, MOST_BYTES, (order, by) -> table(order));
        routes.post("/api/begin/look", Role.OWNER, MOST_BYTES, (order, by) -> state(order));
        routes.post("/api/begin", Role.OWNER, MOST_BYTES, (order, by) -> write(order));
    }

    private JsonNode questions() {
        ObjectNode answer = Json.object();
        ObjectNode units = answer.putObject("units");
        for (UnitSystem system : UnitSystem.values()) {
            Answers none = new Answers(system, Map.of(), GivenFields.NONE, false);
            units.set(system.symbol(), QuestionData.of(none, here()));
        }
        return answer;
    }

    /** By the clock of the desk, on the computer that it is on. */
    private Surroundings here() {
        ZoneId zone = ZoneId.systemDefault();
        return new Surroundings(LocalDate.now(clock.clock().withZone(zone)), zone);
    }

    /** What was pasted or dropped: a map's fields at once, those of a table when somebody has said what its columns are. */
    private static JsonNode table(JsonNode order) {
        if (order.has("files")) {
            return SentFiles.fields(order.path("files"));
        }
        String text = Json.needed(order, "text");
        ObjectNode answer = Json.object();
        if (DrawnFields.isMap(text)) {
            GivenFields drawn = TypedAnswers.drawn(text);
            answer.put("drawn", true).set("fields", FieldsData.of(drawn.rows()));
            return answer;
        }
        PastedTable table = PastedTable.read(text)
                .orElseThrow(() -> Unanswered.senseless(
                        "That is not a table with a field in it; copy the rows with their headings."));
        List<Optional<Heading>> about = order.has("columns")
                ? Json.texts(order, "columns").stream().map(Heading::of).toList()
                : table.guesses();
        answer.set("headings", Json.list(table.headings()));
        answer.set(
                "columns",
                Json.list(about.stream()
                        .map(each -> each.map(Heading::key).orElse(""))
                        .toList()));
        answer.set("fields", FieldsData.of(table.fields(about)));
        answer.set(
                "first",
                Json.list(table.rows().isEmpty() ? List.of() : table.rows().get(0)));
        return answer;
    }

    /** What comes of the answers, and what is usual beside them. */
    private ObjectNode state(JsonNode order) {
        Answers answers = TypedAnswers.of(order);
        ObjectNode state = state(answers, NewSeason.of(answers, here()));
        state.set("questions", QuestionData.of(answers, here()));
        return state;
    }

    private static ObjectNode state(Answers answers, NewSeason begun) {
        ObjectNode state = Json.object().put("text", begun.text());
        ObjectNode crops = state.putObject("crops");
        NewSeason.cropIds(answers).forEach(crops::put);
        ObjectNode ids = state.putObject("ids");
        for (Section section : Section.values()) {
            if (section.naming().isPresent()) {
                ids.set(section.key(), Json.list(NewSeason.ids(answers, section)));
            }
        }
        state.set("missing", Json.list(begun.missing()));
        var problems = state.putArray("problems");
        begun.problems().forEach(problem -> problems.addObject()
                .put("file", problem.file())
                .put("line", problem.line().orElse(0))
                .put("path", problem.path())
                .put("field", begun.fieldOf(problem).map(FieldRow::label).orElse(""))
                .put("unusable", begun.unusable().contains(problem))
                .put("reason", problem.reason())
                .put("remedy", problem.remedy())
                .put("text", problem.toString()));
        if (begun.reading() instanceof Reading.Valid valid) {
            state.set("sums", Json.list(SeasonSummary.lines(CheckedSeason.of(valid.season()))));
        }
        return state;
    }

    private JsonNode write(JsonNode order) {
        Answers answers = TypedAnswers.of(order);
        NewSeason begun = NewSeason.of(answers, here());
        List<Path> written = BegunFiles.of(given).write(begun);
        events.tell("begun", Json.object());
        return state(answers, begun)
                .set("files", Json.list(written.stream().map(Path::toString).toList()));
    }
}
