package freshfurrow.desk.ask;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.app.plan.PlanExport;
import freshfurrow.app.plan.SheetsOfPlan;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.DeskServer;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import freshfurrow.desk.server.Unanswered;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;

/** What people take along: crew sheets to print, and files for other programs. */
public final class PaperDesk implements Part {
    private final DeskSeason season;

    public PaperDesk(DeskSeason season) {
        this.season = season;
    }

    @Override
    public void answers(Routes routes) {
        routes.show("/sheets.html", Role.CREW, this::sheets);
        routes.post("/api/export", Role.OWNER, (order, by) -> export(order));
    }

    private void sheets(Context request) {
        String sheets = SheetsOfPlan.html(
                        season.plan(),
                        Optional.ofNullable(request.queryParam("day")).map(Json::date))
                .orElseThrow(() -> new Unanswered(404, "The plan has no work on any day."));
        DeskServer.sendOwnPage(request, sheets);
    }

    private JsonNode export(JsonNode order) {
        boolean replace = order.path("replace").asBoolean(false);
        return Json.object()
                .set(
                        "files",
                        Json.list(PlanExport.write(
                                        season.plan(),
                                        season.ofPlan(),
                                        EnumSet.allOf(PlanExport.Part.class),
                                        Optional.empty(),
                                        replace)
                                .stream()
                                .map(Path::toString)
                                .toList()));
    }
}
