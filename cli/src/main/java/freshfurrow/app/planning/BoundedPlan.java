package freshfurrow.app.planning;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.progress.Promises;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.bounds.Enumeration;
import freshfurrow.solver.bounds.SeasonBounds;
import freshfurrow.solver.stop.StopSignal;
import java.util.Comparator;
import java.util.function.Function;

/**
 * The plan that the search found, or a better one where every plan could be tried, with its bounds. One that keeps fewer fields of the
 * days ahead where they were is not better.
 */
final class BoundedPlan {
    private static final Comparator<Plan.Score> WORST_FIRST = Comparator.comparingLong(Plan.Score::hard)
            .thenComparingLong(Plan.Score::medium)
            .thenComparingLong(Plan.Score::soft);

    private BoundedPlan() {}

    /**
     * @param record makes a plan of orders
     * @param stop once set, plans are not tried one by one any more
     */
    static Plan of(
            CompiledSeason season,
            Plan plan,
            SeasonBounds bounds,
            Function<PlantingOrders, Plan> record,
            StopSignal stop) {
        return Enumeration.best(season, stop)
                .map(lists -> record.apply(lists.orders(season.season())))
                .map(best -> WORST_FIRST.compare(best.score(), plan.score()) > 0 ? best : plan)
                .filter(best -> kept(season, best) >= kept(season, plan))
                .map(best -> best.withBounds(bounds.forBestPlan(best)))
                .orElseGet(() -> plan.withBounds(bounds.forPlan(plan)));
    }

    private static long kept(CompiledSeason season, Plan plan) {
        return season.season().standing().stream()
                .mapToLong(standing -> Promises.kept(standing, plan))
                .sum();
    }
}
