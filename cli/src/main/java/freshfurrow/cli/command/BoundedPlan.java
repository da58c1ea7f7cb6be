package freshfurrow.cli.command;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.bounds.Enumeration;
import freshfurrow.solver.bounds.SeasonBounds;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/** The plan out of the lists that the search found, or a better one where every plan could be tried, with its bounds. */
final class BoundedPlan {
    private static final Comparator<Plan.Score> WORST_FIRST = Comparator.comparingLong(Plan.Score::hard)
            .thenComparingLong(Plan.Score::medium)
            .thenComparingLong(Plan.Score::soft);

    private BoundedPlan() {}

    /** @param hurry once true, plans are not tried one by one any more */
    static Plan of(CompiledSeason season, List<List<String>> found, Plan.SeasonSource source, BooleanSupplier hurry) {
        return of(season, found, lists -> PlanRecorder.record(season, lists, source), hurry);
    }

    /** The plan of what is left of a season. */
    static Plan of(
            CompiledSeason season,
            List<List<String>> found,
            Plan.SeasonSource source,
            PlanStart start,
            BooleanSupplier hurry) {
        return of(season, found, lists -> PlanRecorder.record(season, lists, source, start), hurry);
    }

    private static Plan of(
            CompiledSeason season,
            List<List<String>> found,
            Function<List<List<String>>, Plan> record,
            BooleanSupplier hurry) {
        Plan plan = record.apply(found);
        SeasonBounds bounds = SeasonBounds.of(season);
        return Enumeration.best(season, hurry)
                .map(lists -> record.apply(lists.ids(season.season())))
                .map(best -> WORST_FIRST.compare(best.score(), plan.score()) > 0 ? best : plan)
                .map(best -> best.withBounds(bounds.forBestPlan(best)))
                .orElseGet(() -> plan.withBounds(bounds.forPlan(plan)));
    }
}
