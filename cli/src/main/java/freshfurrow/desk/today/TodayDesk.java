package freshfurrow.desk.today;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.log.AddedEntries;
import freshfurrow.app.log.DayOfWork;
import freshfurrow.app.log.LogOrder;
import freshfurrow.app.log.Logbook;
import freshfurrow.app.refusal.LogRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.text.LogReport;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.Events;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import freshfurrow.desk.server.Unanswered;
import freshfurrow.desk.words.DeskWords;
import freshfurrow.model.log.Column;
import freshfurrow.model.season.Season;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A day's work, and the log. */
public final class TodayDesk implements Part {
    /** The line may be right, and will be written once what hinders the desk is gone (RFC 9110 section 15.6.4). */
    private static final int LATER = 503;

    private final DeskSeason season;
    private final Events events;

    public TodayDesk(DeskSeason season, Events events) {
        this.season = season;
        this.events = events;
    }

    @Override
    public void answers(Routes routes) {
        routes.get("/api/today", Role.CREW, this::day);
        routes.post(
                "/api/today/stopped",
                Role.CREW,
                (order, by) -> StoppedData.of(logbook().dayOfWork(), order));
        routes.post("/api/log", Role.CREW, (order, by) -> log(order));
    }

    private Logbook logbook() {
        return new Logbook(
                new LogOrder(
                        season.given(),
                        Optional.empty(),
                        Optional.of(new GivenPlan(season.planFolder())),
                        true,
                        Optional.empty()),
                season.clock());
    }

    private JsonNode day(Context request) {
        DayOfWork work = logbook().dayOfWork();
        return DayData.of(work, Optional.ofNullable(request.queryParam("day")).map(Json::date));
    }

    /** Lines that are there already are not written again, so that a phone may send what it does not know to have arrived. */
    private JsonNode log(JsonNode order) {
        Logbook logbook = logbook();
        AddedEntries added = added(logbook, new TappedLines(season(logbook)).of(order.path("lines")));
        ObjectNode answer = Json.object();
        answer.set("added", Json.list(LogReport.added(added.season(), added.log(), added.entries())));
        events.tell("log", Json.object().put("entries", added.log().entries().size()));
        return answer;
    }

    private static Season season(Logbook logbook) {
        try {
            return logbook.dayOfWork().season();
        } catch (Refused e) {
            throw later(e);
        }
    }

    private static AddedEntries added(Logbook logbook, List<Map<Column, String>> lines) {
        try {
            return logbook.addOnce(lines);
        } catch (Refused e) {
            throw e.refusal() instanceof LogRefusal ? later(e) : e;
        }
    }

    private static Unanswered later(Refused hindered) {
        return new Unanswered(LATER, String.join(" ", DeskWords.lines(hindered.refusal())));
    }
}
