package freshfurrow.desk.planning;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.input.PlanOrigin;
import freshfurrow.app.plan.PageOfPlan;
import freshfurrow.app.refusal.Refused;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Unanswered;
import freshfurrow.desk.words.DeskWords;
import freshfurrow.model.plan.Plan;
import java.nio.file.Files;
import java.util.Optional;

/** The plan that is followed: what is told of it. */
final class FollowedPlan {
    private final DeskSeason season;

    FollowedPlan(DeskSeason season) {
        this.season = season;
    }

    /** Empty when there is none. */
    Optional<JsonNode> describe() {
        return Files.exists(season.plan().file()) ? Optional.of(described()) : Optional.empty();
    }

    private JsonNode described() {
        try {
            Plan plan = season.plan().read();
            ObjectNode now = PlanData.of(plan);
            plan.start().ifPresent(start -> now.put("from", start.now().toString()));
            return now.put("ofSeason", isOfSeason(plan));
        } catch (Refused e) {
            return Json.object().set("problems", Json.list(DeskWords.lines(e.refusal())));
        }
    }

    private boolean isOfSeason(Plan plan) {
        try {
            return PlanOrigin.isOf(season.given().read(), plan);
        } catch (Refused e) {
            return false; // as the season stands it has problems, which are told elsewhere
        }
    }

    String page() {
        if (!Files.exists(season.plan().file())) {
            throw new Unanswered(404, "The season has no plan yet.");
        }
        return PageOfPlan.html(season.plan(), season.ofPlan());
    }
}
