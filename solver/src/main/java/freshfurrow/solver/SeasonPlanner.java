package freshfurrow.solver;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.bounds.SeasonBounds;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.construction.FollowedLists;
import freshfurrow.solver.limits.SeasonLimits;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.search.SearchLimits;
import freshfurrow.solver.steady.SteadySearch;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Workers;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;

/** Chooses which fields each planter plants, and in what order. A planner makes one plan. */
public final class SeasonPlanner {
    /** Of the time until the end, for the search; the rest is for what holds the plan back. */
    private static final double TIME_OF_SEARCH = 5.0 / 6;

    private final CompiledSeason season;
    private final PlanningOptions options;
    private final ProgressListener listener;
    private final StopSignal stop;
    private final SteadySearch search;
    private final SeasonLimits limits;
    private final CompletableFuture<SeasonBounds> bounds = new CompletableFuture<>();

    /**
     * A planner for one season, from now on.
     *
     * @param listener told how far planning is while {@link #plan} runs
     */
    public SeasonPlanner(CompiledSeason season, PlanningOptions options, ProgressListener listener) {
        this(season, options, listener, untilTimeIsOver(options));
    }

    private static StopSignal untilTimeIsOver(PlanningOptions options) {
        StopSignal untilTold = StopSignal.untilTold();
        return options.time()
                .map(time -> untilTold.noLaterThan(System.nanoTime() + time.toNanos()))
                .orElse(untilTold);
    }

    /**
     * A planner for one season.
     *
     * @param options of which the time is not looked at
     * @param listener told how far planning is while {@link #plan} runs
     * @param stop ends planning and {@link #limits} soon, with the best so far
     */
    public SeasonPlanner(CompiledSeason season, PlanningOptions options, ProgressListener listener, StopSignal stop) {
        this.season = season;
        this.options = options;
        this.listener = listener;
        this.stop = stop;
        this.search = new SteadySearch(season, options.seed(), options.threads());
        this.limits = new SeasonLimits(season, options.seed(), options.threads(), stop);
    }

    /**
     * The best lists found, in the season's order of planters. Blocks until the moves of the options are tried, or
     * most of the time is over, or until nothing got better for a while, or until the signal is set. A field that the season cannot hold
     * may be in no list. Fields promised for the days ahead stay where that costs next to nothing.
     */
    public PlantingOrders plan() {
        return improve(time -> FirstLists.severalBest(season, time)).orders(season.season());
    }

    /**
     * The best lists found from lists that were followed before, of which the fields are taken that are left; others are added.
     * Where the quick rules of {@link #plan} make better lists, the search begins with those.
     *
     * @param followed in the season's order of planters
     * @see #plan
     */
    public PlantingOrders planFrom(PlantingOrders followed) {
        return improve(time -> List.of(FollowedLists.orBetter(season, followed, time)))
                .orders(season.season());
    }

    private FieldLists improve(Function<StopSignal, List<FieldLists>> begin) {
        StopSignal time = stop.within(TIME_OF_SEARCH);
        ProgressTicker ticker = new ProgressTicker(season, time, listener, FirstLists.byHand(season), bounds);
        ticker.start();
        try {
            List<FieldLists> first = begin.apply(time);
            ticker.better(first.get(0));
            workOutBounds();
            return search.improve(first, new SearchLimits(time, options.steps()), ticker::better);
        } finally {
            ticker.stop();
        }
    }

    /** What no plan of the season can do better: worked out beside the search, from when the first lists stand. */
    public CompletableFuture<SeasonBounds> bounds() {
        return bounds;
    }

    /**
     * What holds a plan of the season back, by short searches after {@link #plan}. Blocks; empty when the signal was set before.
     *
     * @param plan as the timeline plays it out
     */
    public Optional<List<Plan.Limit>> limits(Plan plan) {
        return limits.of(plan, SeasonLimits.moves(search.movesTried()));
    }

    private void workOutBounds() {
        Workers.beside("bounds", bounds, () -> SeasonBounds.of(season));
    }
}
