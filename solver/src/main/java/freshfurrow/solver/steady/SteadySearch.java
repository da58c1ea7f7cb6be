package freshfurrow.solver.steady;

import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A search that keeps what crews were told for the days ahead, in two halves. The first goes by the goals of the season, where the least
 * lateness outweighs any number of moved fields, and so finds out what can be had. The second keeps as many promises as some lateness
 * beside that allows. Where nothing is promised there is the first one only.
 */
public final class SteadySearch {
    private final CompiledSeason season;
    private final long seed;
    private final int threads;
    private final int promises;
    private final Search free;
    private volatile @Nullable Search steady;
    private volatile boolean stopped;

    /** @param threads 1 or more; what is found by a number of moves does not depend on it */
    public SteadySearch(CompiledSeason season, long seed, int threads) {
        this.season = season;
        this.seed = seed;
        this.threads = threads;
        promises = promises(season);
        free = new Search(season, seed, threads);
    }

    private static int promises(CompiledSeason season) {
        return (int) season.season().fields().stream()
                .filter(field -> season.season()
                        .standing()
                        .map(Standing::promised)
                        .filter(promised -> promised.containsKey(field.id()))
                        .isPresent())
                .count();
    }

    /**
     * The best lists found; blocks until a limit or {@link #stop}.
     *
     * @param startNs when planning began, a reading of {@link System#nanoTime}
     * @param time from then on, both halves together
     * @param moves to try, both halves together
     * @param onBetter told of better lists, on a thread of the search
     */
    public FieldLists improve(
            FieldLists start,
            long startNs,
            Optional<Duration> time,
            OptionalLong moves,
            Consumer<FieldLists> onBetter) {
        if (promises == 0) {
            return free.improve(start, SearchLimits.from(startNs, time, moves), onBetter);
        }
        OptionalLong half = moves.isPresent() ? OptionalLong.of(moves.getAsLong() / 2) : moves;
        FieldLists found =
                free.improve(start, SearchLimits.from(startNs, time.map(limit -> limit.dividedBy(2)), half), onBetter);
        SteadyScoring scoring = SteadyScoring.besides(new ListPlayer(season).play(found), promises);
        FieldLists kept = new KeptPromises(season, scoring).in(found);
        onBetter.accept(kept);
        OptionalLong rest = moves.isPresent() ? OptionalLong.of(moves.getAsLong() - half.getAsLong()) : moves;
        Search second = new Search(season, scoring, seed, threads);
        steady = second;
        if (stopped) {
            second.stop();
        }
        return second.improve(kept, SearchLimits.from(startNs, time, rest), onBetter);
    }

    /** Moves tried so far, in rounds that have ended. */
    public long movesTried() {
        Search second = steady;
        return free.movesTried() + (second == null ? 0 : second.movesTried());
    }

    /** Ends the search soon; from any thread. */
    public void stop() {
        stopped = true;
        free.stop();
        Search second = steady;
        if (second != null) {
            second.stop();
        }
    }
}
