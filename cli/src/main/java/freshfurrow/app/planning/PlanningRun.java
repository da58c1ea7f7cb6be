package freshfurrow.app.planning;

import freshfurrow.app.time.Grace;
import freshfurrow.app.time.Stage;
import freshfurrow.app.time.StageClock;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.SeasonPlanner;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The search for a plan and what is said beside it, all in the time of the options but for what auditing and writing take. */
final class PlanningRun {
    /** Time for bounds that only have to be set beside the plan; who presses Ctrl-C hardly notices. */
    private static final long GRACE_MS = 300;

    /** To audit a plan and to write it with its page: that much on a quiet machine of two cores. */
    private static final long FINISHING_NS = 500_000_000;

    private static final long FINISHING_NS_PER_FIELD = 1_000_000;

    /** How much of the time it may take to say how sure the plan is. */
    private static final double CHANCES_SHARE = 0.1;

    /** And that much of what reading took, where a busy machine let that take long. */
    private static final int READINGS = 2;

    private final CompiledSeason season;
    private final StopSignal told;
    private final StopSignal finish;
    private final StopSignal stop;
    private final int threads;
    private final PlanningListener listener;
    private final StageClock clock;
    private final SeasonPlanner planner;

    /** @param told set by whoever does not want to wait any longer */
    PlanningRun(
            CompiledSeason season,
            PlanningOptions options,
            StopSignal told,
            PlanningListener listener,
            StageClock clock) {
        this.season = season;
        this.told = told;
        this.listener = listener;
        this.clock = clock;
        threads = options.threads();
        finish = options.time()
                .map(time -> told.noLaterThan(clock.startNs() + time.toNanos() - finishingNs(time)))
                .orElse(told);
        stop = season.season().timesVary() ? finish.within(1 - CHANCES_SHARE) : finish;
        planner = new SeasonPlanner(season, options, listener, stop);
    }

    /** Never more than half of the time. */
    private long finishingNs(Duration time) {
        long usualNs = FINISHING_NS + FINISHING_NS_PER_FIELD * season.fieldCount();
        return Math.min(time.toNanos() / 2, Math.max(usualNs, READINGS * (System.nanoTime() - clock.startNs())));
    }

    /** A plan with its bounds and its bottlenecks, as far as there was time. */
    record Finished(Plan plan, PlanningEnd end) {}

    /**
     * The plan that the search found, or a better one where every one could be tried.
     *
     * @param search asks the planner
     * @param record makes a plan of orders
     */
    Finished plan(Function<SeasonPlanner, PlantingOrders> search, Function<PlantingOrders, Plan> record) {
        PlantingOrders orders = search.apply(planner);
        listener.searched();
        Plan found = record.apply(orders);
        clock.endOf(Stage.SEARCH);
        Optional<Plan> bounded = Grace.inTime(stop, GRACE_MS, () -> Optional.of(bounded(found, record)));
        Plan best = bounded.orElse(found);
        clock.endOf(Stage.BOUNDS);
        Optional<List<Plan.Limit>> limits = Grace.inTime(stop, GRACE_MS, () -> planner.limits(best));
        clock.endOf(Stage.LIMITS);
        Plan whole = SimulatedSeasons.withChances(
                season, limits.map(best::withLimits).orElse(best), threads, finish, clock);
        return new Finished(whole, new PlanningEnd(told.isTold(), bounded.isPresent(), limits.isPresent()));
    }

    private Plan bounded(Plan plan, Function<PlantingOrders, Plan> record) {
        return BoundedPlan.of(season, plan, planner.bounds().join(), record, stop);
    }
}
