package freshfurrow.cli.command;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.bounds.Enumeration;
import freshfurrow.solver.bounds.SeasonBounds;
import java.util.Comparator;
import java.util.function.BooleanSupplier;

/** The plan that the search found, or a better one where every plan could be tried, with its bounds. */
final class BoundedPlan {
    private static final Comparator<Plan.Score> WORST_FIRST = Comparator.comparingLong(Plan.Score::hard)
            .thenComparingLong(Plan.Score::medium)
            .thenComparingLong(Plan.Score::soft);

    private BoundedPlan() {}

    /** @param hurry once true, plans are not tried one by one any more */
    static Plan of(CompiledSeason season, Plan plan, SeasonBounds bounds, BooleanSupplier hurry) {
        return Enumeration.best(season, hurry)
                .map(lists -> PlanRecorder.record(season, lists.ids(season.season()), plan.season()))
                .map(best -> WORST_FIRST.compare(best.score(), plan.score()) > 0 ? best : plan)
                .map(best -> best.withBounds(bounds.forBestPlan(best)))
                .orElseGet(() -> plan.withBounds(bounds.forPlan(plan)));
    }
}
