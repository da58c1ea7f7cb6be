package freshfurrow.desk.planning;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.output.PlanArchive;
import freshfurrow.app.planning.PlanningListener;
import freshfurrow.app.planning.ProposedPlan;
import freshfurrow.app.planning.ReplanningOrder;
import freshfurrow.app.planning.SeasonPlanning;
import freshfurrow.app.planning.SeasonReplanning;
import freshfurrow.app.refusal.Refused;
import freshfurrow.cli.text.Figures;
import freshfurrow.desk.season.DeskSeason;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.words.DeskWords;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Season;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.Progress;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** One search for a plan, on a thread of its own. */
final class PlanSearch implements PlanningListener {
    private final DeskSeason season;
    private final SearchOrder order;
    private final Runnable news;
    private final Runnable progressed;
    private final StopSignal stop = StopSignal.untilTold();
    private final Optional<String> heldAgainst;
    private volatile Optional<Figures> figures = Optional.empty();
    private volatile Optional<Progress> best = Optional.empty();
    private volatile Optional<ProposedPlan> proposed = Optional.empty();
    private volatile List<String> problems = List.of();

    /**
     * A search that has not begun.
     *
     * @param news called when it has ended, from any thread
     * @param progressed called now and then while it goes on, from any thread
     */
    PlanSearch(DeskSeason season, SearchOrder order, Runnable news, Runnable progressed) {
        this.progressed = progressed;
        this.season = season;
        this.order = order;
        this.news = news;
        heldAgainst = PlanArchive.own(season.planFolder()).newestText();
    }

    void begin() {
        Thread thread = new Thread(this::run, "planning");
        thread.setDaemon(true);
        thread.start();
    }

    /** Ends it soon, with the best plan so far. */
    void stop() {
        stop.set();
    }

    boolean isUnderway() {
        return proposed.isEmpty() && problems.isEmpty();
    }

    Optional<ProposedPlan> proposed() {
        return proposed;
    }

    /** The plan that was followed when the search began. */
    Optional<String> heldAgainst() {
        return heldAgainst;
    }

    private void run() {
        try {
            proposed = Optional.of(order.again() ? again() : whole());
        } catch (Refused e) {
            problems = DeskWords.lines(e.refusal());
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            problems = DeskWords.own(e);
        }
        news.run();
    }

    private PlanningOptions options() {
        return new PlanningOptions(Optional.of(order.time()), OptionalLong.empty(), 0);
    }

    private ProposedPlan whole() {
        return SeasonPlanning.propose(season.given(), season.planFolder(), options(), stop, this);
    }

    private ProposedPlan again() {
        ReplanningOrder replanning = new ReplanningOrder(
                season.given(),
                season.plan(),
                true,
                order.from(),
                new News(List.of(), List.of(), Set.of()),
                Optional.empty(),
                false,
                options(),
                Optional.empty(),
                true,
                false);
        return SeasonReplanning.propose(replanning, season.clock(), stop, this);
    }

    @Override
    public void begins(Season left) {
        figures = Optional.of(new Figures(left.units()));
    }

    @Override
    public void at(Progress progress) {
        best = Optional.of(progress);
        progressed.run();
    }

    @Override
    public void searched() {
        best = best.map(last -> new Progress(
                Optional.of(Duration.ZERO), last.fills(), last.lateHaDays(), last.unservedHa(), last.leastFills()));
    }

    JsonNode describe() {
        ObjectNode data = Json.object();
        data.put("again", order.again());
        proposed.ifPresent(plan -> {
            data.setAll(PlanData.of(plan.plan()));
            data.set("changes", Json.list(plan.changes()));
            plan.moment().ifPresent(moment -> data.put("from", moment.now().toString()));
            data.put("stopped", plan.end().stopped());
            data.put("withPage", plan.page().isPresent());
        });
        data.set("problems", Json.list(problems));
        data.put("state", isUnderway() ? "underway" : proposed.isPresent() ? "proposed" : "failed");
        if (isUnderway()) {
            best.ifPresent(progress -> figures.ifPresent(units -> data.set("best", told(progress, units))));
        }
        return data;
    }

    private static ObjectNode told(Progress progress, Figures units) {
        ObjectNode best = Json.object()
                .put("late", units.areaDays(progress.lateHaDays()))
                .put("unplanted", units.area(progress.unservedHa()))
                .put("fills", progress.fills());
        progress.leastFills().ifPresent(least -> best.put("leastFills", least));
        progress.timeLeft().ifPresent(left -> best.put("secondsLeft", Math.max(0, left.toSeconds())));
        return best;
    }
}
