package freshfurrow.solver;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.bounds.SeasonBounds;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.construction.FollowedLists;
import freshfurrow.solver.limits.SeasonLimits;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.steady.SteadySearch;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/** Chooses which fields each planter plants, and in what order. A planner makes one plan. */
public final class SeasonPlanner {
    private final CompiledSeason season;
    private final PlanningOptions options;
    private final ProgressListener listener;
    private final SteadySearch search;
    private final SeasonLimits limits;
    private final CompletableFuture<SeasonBounds> bounds = new CompletableFuture<>();

    /**
     * A planner for one season.
     *
     * @param listener told how far planning is while {@link #plan} runs
     */
    public SeasonPlanner(CompiledSeason season, PlanningOptions options, ProgressListener listener) {
        this.season = season;
        this.options = options;
        this.listener = listener;
        this.search = new SteadySearch(season, options.seed(), options.threads());
        this.limits = new SeasonLimits(season, options.seed(), options.threads());
    }

    /**
     * The best lists found: ids of fields for each planter, in the season's order. Blocks until a limit of the options, or
     * until nothing got better for a while, or until {@link #stop}. A field that the season cannot hold may be in no list. Fields
     * promised for the days ahead stay where that costs next to nothing.
     */
    public List<List<String>> plan() {
        return improve(() -> FirstLists.best(season)).ids(season.season());
    }

    /**
     * The best lists found from lists that were followed before, of which the fields are taken that are left; others are added.
     * Where the quick rules of {@link #plan} make better lists, the search begins with those.
     *
     * @param followed ids of fields for each planter, in the season's order
     * @see #plan
     */
    public List<List<String>> planFrom(List<List<String>> followed) {
        return improve(() -> FollowedLists.orBetter(season, followed)).ids(season.season());
    }

    private FieldLists improve(Supplier<FieldLists> begin) {
        long startNs = System.nanoTime();
        ProgressTicker ticker = new ProgressTicker(season, options.time(), listener, FirstLists.byHand(season));
        ticker.start();
        try {
            FieldLists first = begin.get();
            ticker.better(first);
            workOutBounds();
            return search.improve(first, startNs, options.time(), options.steps(), ticker::better);
        } finally {
            ticker.stop();
        }
    }

    /** What no plan of the season can do better: worked out beside the search, from when the first lists stand. */
    public CompletableFuture<SeasonBounds> bounds() {
        return bounds;
    }

    /**
     * What holds a plan of the season back, by short searches after {@link #plan}. Blocks; empty soon after {@link #stop}.
     *
     * @param plan as the timeline plays it out
     */
    public Optional<List<Plan.Limit>> limits(Plan plan) {
        return limits.of(plan, SeasonLimits.moves(search.movesTried()));
    }

    /** Ends planning soon, with the best so far; from any thread, at any time. */
    public void stop() {
        search.stop();
        limits.stop();
    }

    private void workOutBounds() {
        Thread thread = new Thread(() -> bounds.completeAsync(() -> SeasonBounds.of(season), Runnable::run), "bounds");
        thread.setDaemon(true);
        thread.start();
    }
}
