package freshfurrow.solver.steady;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A search that keeps what crews were told for the days ahead, in two parts. The first goes by the goals of the season, where the least
 * lateness outweighs any number of moved fields, and so finds out what can be had. The second keeps as many promises as some lateness
 * and effort beside that allow. Where nothing is promised there is the first one only.
 */
public final class SteadySearch {
    /** Of time and moves, for the first part: what it does not find out of lateness, the second does not either. */
    private static final double FREE_SHARE = 2.0 / 3;

    private final CompiledSeason season;
    private final long seed;
    private final int threads;
    private final int promises;
    private final Search free;
    private volatile @Nullable Search steady;

    /** @param threads 1 or more; what is found by a number of moves does not depend on it */
    public SteadySearch(CompiledSeason season, long seed, int threads) {
        this.season = season;
        this.seed = seed;
        this.threads = threads;
        promises = (int) IntStream.range(0, season.fieldCount())
                .filter(field -> season.promisedPlanter(field) >= 0)
                .count();
        free = new Search(season, seed, threads);
    }

    /**
     * The best lists found; blocks until a limit.
     *
     * @param starts one or more, the best first
     * @param limits of both parts together
     * @param onBetter told of better lists, on a thread of the search
     */
    public FieldLists improve(List<FieldLists> starts, SearchLimits limits, Consumer<FieldLists> onBetter) {
        if (promises == 0) {
            return free.improve(starts, limits, onBetter);
        }
        OptionalLong moves = limits.moves();
        OptionalLong freeMoves =
                moves.isPresent() ? OptionalLong.of(Math.round(moves.getAsLong() * FREE_SHARE)) : moves;
        StopSignal stop = limits.stop();
        FieldLists found = free.improve(starts, new SearchLimits(stop.within(FREE_SHARE), freeMoves), onBetter);
        SteadyScoring scoring = SteadyScoring.besides(
                new ListPlayer(season).play(found), promises, season.season().goals());
        FieldLists kept = new KeptPromises(season, scoring, stop).in(found);
        onBetter.accept(kept);
        OptionalLong rest = moves.isPresent() ? OptionalLong.of(moves.getAsLong() - freeMoves.getAsLong()) : moves;
        Search second = new Search(season, scoring, seed, threads);
        steady = second;
        return second.improve(kept, new SearchLimits(stop, rest), onBetter);
    }

    /** Moves tried so far, in rounds that have ended. */
    public long movesTried() {
        Search second = steady;
        return free.movesTried() + (second == null ? 0 : second.movesTried());
    }
}
