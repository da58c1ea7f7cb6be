package freshfurrow.desk.trial;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.trial.Placing;
import freshfurrow.app.trial.Trial;
import freshfurrow.app.trial.Tried;
import freshfurrow.desk.planning.PlanData;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import freshfurrow.desk.server.Unanswered;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What would be if fields were planted elsewhere or at another time. */
public final class TrialDesk implements Part {
    private static final int MOST_PLACINGS = 50;

    private final DeskSeason season;
    /** The plan that was opened last, as long as it is the one that is followed. */
    private Optional<Opened> opened = Optional.empty();

    public TrialDesk(DeskSeason season) {
        this.season = season;
    }

    /** @param text of the plan's file and of the season, by which it is seen that either is another by now */
    private record Opened(String text, Trial trial) {}

    @Override
    public void answers(Routes routes) {
        routes.get("/api/try", Role.OWNER, request -> board());
        routes.post("/api/try", Role.OWNER, (order, by) -> tried(order));
    }

    private JsonNode board() {
        if (!Files.exists(season.plan().file())) {
            return Json.object();
        }
        Trial trial = trial();
        return TrialBoard.of(trial.season(), trial.plan());
    }

    private JsonNode tried(JsonNode order) {
        Trial trial = trial();
        Tried tried = trial.with(placings(order));
        ObjectNode answer = TrialBoard.of(tried.season(), tried.plan());
        answer.set("now", PlanData.of(trial.plan()));
        answer.set("then", PlanData.of(tried.plan()));
        TrialBoard.moved(answer, tried);
        return answer;
    }

    private synchronized Trial trial() {
        if (!Files.exists(season.plan().file())) {
            throw new Unanswered(409, "The season has no plan yet to try things out with.");
        }
        String text = season.given().read().sha256() + season.planText();
        if (opened.filter(last -> last.text().equals(text)).isEmpty()) {
            opened = Optional.of(new Opened(text, Trial.of(season.plan(), season.ofPlan())));
        }
        return opened.get().trial();
    }

    private static List<Placing> placings(JsonNode order) {
        List<Placing> placings = new ArrayList<>();
        for (JsonNode placing : order.path("placings")) {
            placings.add(new Placing(
                    Json.needed(placing, "field"),
                    Json.text(placing, "machine"),
                    Json.text(placing, "on").map(Json::date),
                    placing.path("place").isInt()
                            ? OptionalInt.of(placing.path("place").intValue())
                            : OptionalInt.empty()));
        }
        if (placings.size() > MOST_PLACINGS) {
            throw Unanswered.senseless("More than " + MOST_PLACINGS + " fields are moved at once.");
        }
        return placings;
    }
}
