package freshfurrow.app.planning;

import freshfurrow.cli.command.Interruption;
import freshfurrow.cli.command.ProgressLine;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.PlanningOptions;
import freshfurrow.solver.SeasonPlanner;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The search for a plan and what is said beside it, all in the time of the options but for what auditing and writing take. */
public final class PlanningRun {
    /** Time for bounds that only have to be set beside the plan; who presses Ctrl-C hardly notices. */
    private static final long GRACE_MS = 300;

    /** To audit a plan and to write it with its page: that much on a quiet machine of two cores. */
    private static final long FINISHING_NS = 500_000_000;

    private static final long FINISHING_NS_PER_FIELD = 1_000_000;

    /** And that much of what reading took, where a busy machine let that take long. */
    private static final int READINGS = 2;

    private final CompiledSeason season;
    private final Interruption interruption;
    private final TimeTaken taken;
    private final StopSignal stop;
    private final SeasonPlanner planner;
    private final ProgressLine progress;

    public PlanningRun(CompiledSeason season, PlanningOptions options, Interruption interruption, TimeTaken taken) {
        this.season = season;
        this.interruption = interruption;
        this.taken = taken;
        stop = options.time()
                .map(time -> interruption.stop().noLaterThan(taken.startNs() + time.toNanos() - finishingNs(time)))
                .orElse(interruption.stop());
        progress = ProgressLine.onTerminal(season.season().units());
        planner = new SeasonPlanner(season, options, progress, stop);
    }

    /** Never more than half of the time. */
    private long finishingNs(Duration time) {
        long usualNs = FINISHING_NS + FINISHING_NS_PER_FIELD * season.fieldCount();
        return Math.min(time.toNanos() / 2, Math.max(usualNs, READINGS * (System.nanoTime() - taken.startNs())));
    }

    /**
     * A plan with its bounds and its bottlenecks, as far as there was time.
     *
     * @param stopped says what the plan is without
     */
    public record Finished(Plan plan, Optional<String> stopped) {}

    /**
     * The plan that the search found, or a better one where every one could be tried.
     *
     * @param search asks the planner for lists
     * @param record makes a plan of lists of ids
     */
    public Finished plan(
            Function<SeasonPlanner, List<List<String>>> search, Function<List<List<String>>, Plan> record) {
        List<List<String>> lists = search.apply(planner);
        progress.clear();
        Plan found = record.apply(lists);
        taken.endOf("search");
        Optional<Plan> bounded = interruption.inTime(stop, GRACE_MS, () -> Optional.of(bounded(found, record)));
        Plan best = bounded.orElse(found);
        taken.endOf("proven minimums");
        Optional<List<Plan.Limit>> limits = interruption.inTime(stop, GRACE_MS, () -> planner.limits(best));
        taken.endOf("bottlenecks");
        return new Finished(
                limits.map(best::withLimits).orElse(best), without(bounded.isPresent(), limits.isPresent()));
    }

    private Optional<String> without(boolean bounded, boolean limited) {
        if (bounded && limited) {
            return interruption.stop().isTold()
                    ? Optional.of("Stopped: this is the best plan so far.")
                    : Optional.empty();
        }
        return Optional.of((interruption.stop().isTold() ? "Stopped before " : "Time was up before ")
                + (bounded ? "" : limited ? "proven minimums" : "proven minimums and ")
                + (limited ? "" : "bottlenecks")
                + " were worked out; the plan does not have them.");
    }

    private Plan bounded(Plan plan, Function<List<List<String>>, Plan> record) {
        return BoundedPlan.of(season, plan, planner.bounds().join(), record, stop::isSet);
    }
}
