package freshfurrow.solver.limits;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.plan.Resource;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Distances;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Which resource keeps a plan from being in time, and which keeps its planters waiting. From the plan's lists a short search goes
 * out once for each resource, with that one made free and all others as they are; and once with nothing free, so that what any
 * search would gain is not put down to a resource. All have the same number of moves and the same luck,
 * and, where a time is set, about the same time at the most.
 *
 * <p>What a share tells is evidence, not proof: a longer search may gain more. Shares of several resources overlap and need not
 * add up to one. Where two resources hold the season back together, freeing either may change nothing. In a queue of shared
 * machines, more of one thing can even make other things later; such a share is 0.
 */
public final class SeasonLimits {
    /** Enough for the lists of 40 fields to follow what is free: four times as many told the same. */
    private static final long MOST_MOVES = 5_000;

    /** All short searches together try a fifth of the moves that the plan's own search tried. */
    private static final long SHARE_OF_MOVES = 5;

    private final CompiledSeason season;
    private final ShortSearches searches;

    /**
     * Limits of plans of a season.
     *
     * @param threads 1 or more; what is found does not depend on it, but by the clock
     * @param stop ends the searches
     */
    public SeasonLimits(CompiledSeason season, long seed, int threads, StopSignal stop) {
        this.season = season;
        searches = new ShortSearches(seed, threads, stop);
    }

    /** Moves for each short search, 0 or more, when the plan's own search tried so many. */
    public static long moves(long movesTried) {
        return Math.min(MOST_MOVES, movesTried / SHARE_OF_MOVES / (Resource.values().length + 1));
    }

    /**
     * What each resource takes from the plan, in the order planter, rig, hose, waterLimit, compost, weather, windows. Blocks
     * until all searches have ended; empty when the signal was set before all had begun. Nothing is searched where nothing is late, left or
     * waited for.
     *
     * @param plan a plan of that season as the timeline plays it out
     * @param moves for each search, 0 or more; with 0 the plan's own lists are played out
     */
    public Optional<List<Plan.Limit>> of(Plan plan, long moves) {
        if (plan.harm() == 0 && plan.totals().waitMin() == 0) {
            return Optional.of(Arrays.stream(Resource.values())
                    .map(free -> new Plan.Limit(free, 0, 0, 0, 0, 0))
                    .toList());
        }
        PlantingOrders orders = PlantingOrders.of(plan)
                .with(season.season().applicators().stream()
                        .map(Applicator::id)
                        .map(id -> plan.planters().get(id).fields())
                        .toList());
        return searches.from(orders, seasons(), moves)
                .map(found -> limits(found.get(0), found.subList(1, found.size())));
    }

    /** The season with nothing free, and with each resource. */
    private List<Supplier<CompiledSeason>> seasons() {
        Distances roads = season.roads();
        List<Supplier<CompiledSeason>> seasons = new ArrayList<>();
        seasons.add(() -> season);
        for (Resource free : Resource.values()) {
            seasons.add(() -> CompiledSeason.of(FreedSeason.of(season.season(), free, roads)));
        }
        return seasons;
    }

    private static List<Plan.Limit> limits(Plan nothingFree, List<Plan> freed) {
        Iterator<Plan> next = freed.iterator();
        return Arrays.stream(Resource.values())
                .map(free -> limit(free, nothingFree, next.next()))
                .toList();
    }

    private static Plan.Limit limit(Resource free, Plan nothingFree, Plan freed) {
        return new Plan.Limit(
                free,
                freed.totals().unservedHa(),
                freed.totals().lateHaDays(),
                freed.totals().waitMin(),
                shareGone(nothingFree.harm(), freed.harm()),
                shareGone(nothingFree.totals().waitMin(), freed.totals().waitMin()));
    }

    /** Share of {@code before} that is gone in {@code after}, 0 to 1; 0 when there was nothing. */
    static double shareGone(double before, double after) {
        return before > 0 ? Math.max(0, Math.min(1, (before - after) / before)) : 0;
    }
}
