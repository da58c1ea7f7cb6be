package freshfurrow.solver.limits;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Distances;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.util.Arrays;
import java.util.List;

/**
 * Which resource keeps a plan from being in time, and which keeps its planters waiting: the plan's lists played out once for each
 * resource, with that one made free and all others as they are.
 *
 * <p>The lists stay, so a share tells what that resource alone takes away from this plan; lists made for the freed season might do
 * better. Shares of several resources overlap and need not add up to one. Where two resources hold the season back together,
 * freeing either may change nothing. In a queue of shared machines, more of one thing can even make other things later; such a
 * share is 0.
 */
public final class SeasonLimits {
    private SeasonLimits() {}

    /**
     * What each resource takes from the plan, in the order planter, rig, hose, waterLimit, compost, weather, windows.
     *
     * @param plan a plan of that season as the timeline plays it out
     */
    public static List<Plan.Limit> of(CompiledSeason season, Plan plan) {
        List<List<String>> lists = season.season().planters().stream()
                .map(Planter::id)
                .map(id -> plan.planters().get(id).fields())
                .toList();
        Distances roads = season.roads();
        return Arrays.stream(Resource.values())
                .map(free -> {
                    Season freed = FreedSeason.of(season.season(), free, roads);
                    return limit(free, plan, PlanRecorder.record(CompiledSeason.of(freed), lists, plan.season()));
                })
                .toList();
    }

    private static Plan.Limit limit(Resource free, Plan plan, Plan freed) {
        return new Plan.Limit(
                free,
                freed.totals().unservedHa(),
                freed.totals().lateHaDays(),
                freed.totals().waitMin(),
                shareGone(
                        (double) -plan.score().medium(), (double) -freed.score().medium()),
                shareGone(plan.totals().waitMin(), freed.totals().waitMin()));
    }

    /** Share of {@code before} that is gone in {@code after}, 0 to 1; 0 when there was nothing. */
    static double shareGone(double before, double after) {
        return before > 0 ? Math.max(0, Math.min(1, (before - after) / before)) : 0;
    }
}
