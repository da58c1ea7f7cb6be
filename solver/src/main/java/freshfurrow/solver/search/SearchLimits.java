package freshfurrow.solver.search;

import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * When a search ends at the latest. One of the two has to be there.
 *
 * @param deadlineNs by the clock, a reading of {@link System#nanoTime}
 * @param moves number of moves to try: the same result on every run
 */
public record SearchLimits(OptionalLong deadlineNs, OptionalLong moves) {
    public SearchLimits {
        if (deadlineNs.isEmpty() && moves.isEmpty()) {
            throw new IllegalArgumentException("a search needs a limit");
        }
    }

    /** Limits of a search that began at a reading of {@link System#nanoTime}. */
    public static SearchLimits from(long startNs, Optional<Duration> time, OptionalLong moves) {
        return new SearchLimits(
                time.map(limit -> OptionalLong.of(startNs + limit.toNanos())).orElse(OptionalLong.empty()), moves);
    }

    /**
     * The end of one round of a search; empty when the search is over.
     *
     * @param roundMoves moves that the round may try at the most
     * @param movesTried moves that the search has tried before it
     */
    Optional<TerminationConfig> end(long roundMoves, long movesTried) {
        long movesLeft = Math.min(roundMoves, moves.orElse(Long.MAX_VALUE) - movesTried);
        if (movesLeft <= 0) {
            return Optional.empty();
        }
        TerminationConfig end = new TerminationConfig().withMoveCountLimit(movesLeft);
        if (deadlineNs.isPresent()) {
            long leftMs = (deadlineNs.getAsLong() - System.nanoTime()) / 1_000_000;
            if (leftMs <= 0) {
                return Optional.empty();
            }
            end.withMillisecondsSpentLimit(leftMs);
        }
        return Optional.of(end);
    }
}
