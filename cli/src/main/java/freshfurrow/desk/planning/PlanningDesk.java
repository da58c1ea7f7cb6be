package freshfurrow.desk.planning;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.planning.PlanTaking;
import freshfurrow.app.planning.ProposedPlan;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.DeskServer;
import freshfurrow.desk.server.Events;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import freshfurrow.desk.server.Unanswered;
import java.util.Optional;

/** Plans at the desk: one search at a time, whose plan stays a proposal until it is taken. */
public final class PlanningDesk implements Part, AutoCloseable {
    private final DeskSeason season;
    private final Events events;
    private final FollowedPlan followed;
    private Optional<PlanSearch> search = Optional.empty();

    public PlanningDesk(DeskSeason season, Events events) {
        this.season = season;
        this.events = events;
        followed = new FollowedPlan(season);
    }

    @Override
    public void answers(Routes routes) {
        routes.get("/api/plan", Role.CREW, request -> state());
        routes.post("/api/plan/start", Role.OWNER, (order, by) -> start(order));
        routes.post("/api/plan/stop", Role.OWNER, (order, by) -> stop());
        routes.post("/api/plan/take", Role.OWNER, (order, by) -> take());
        routes.post("/api/plan/leave", Role.OWNER, (order, by) -> leave());
        routes.show("/plan/now.html", Role.CREW, request -> DeskServer.sendOwnPage(request, followed.page()));
        routes.show("/plan/proposed.html", Role.OWNER, request -> DeskServer.sendOwnPage(request, proposedPage()));
    }

    private synchronized JsonNode state() {
        ObjectNode state = Json.object();
        followed.describe().ifPresent(now -> state.set("now", now));
        search.ifPresent(running -> state.set("search", running.describe()));
        return state;
    }

    private synchronized JsonNode start(JsonNode order) {
        if (search.filter(PlanSearch::isUnderway).isPresent()) {
            throw new Unanswered(409, "A plan is being made; stop that search first.");
        }
        PlanSearch next = new PlanSearch(season, SearchOrder.of(order), this::tell, this::tellProgress);
        search = Optional.of(next);
        next.begin();
        return tell();
    }

    private synchronized JsonNode stop() {
        search.ifPresent(PlanSearch::stop);
        return state();
    }

    private synchronized JsonNode take() {
        PlanSearch done = search.orElseThrow(PlanningDesk::nothingProposed);
        ProposedPlan proposed = done.proposed().orElseThrow(PlanningDesk::nothingProposed);
        PlanTaking.take(proposed, season.given(), season.planFolder(), done.heldAgainst());
        search = Optional.empty();
        return tell();
    }

    private synchronized JsonNode leave() {
        search.ifPresent(PlanSearch::stop);
        search = Optional.empty();
        return tell();
    }

    private synchronized String proposedPage() {
        return search.flatMap(PlanSearch::proposed)
                .orElseThrow(PlanningDesk::nothingProposed)
                .page()
                .orElseThrow(() -> new Unanswered(404, "The search was stopped before its page was made."));
    }

    private static Unanswered nothingProposed() {
        return new Unanswered(409, "There is no new plan.");
    }

    /** The state, which all open pages are told as well. */
    private synchronized JsonNode tell() {
        JsonNode state = state();
        events.tell("plan", state);
        return state;
    }

    /** How far the search is. Told so often that neither plan nor season is to be read for it. */
    private synchronized void tellProgress() {
        search.filter(PlanSearch::isUnderway).ifPresent(running -> events.tell("progress", running.describe()));
    }

    @Override
    public synchronized void close() {
        search.ifPresent(PlanSearch::stop);
    }
}
