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

    /** The same, but with only a part of the time that is left by the clock. */
    SearchLimits share(double part) {
        if (deadlineNs.isEmpty()) {
            return this;
        }
        long now = System.nanoTime();
        return new SearchLimits(OptionalLong.of(now + (long) (part * (deadlineNs.getAsLong() - now))), moves);
    }

    /** Moves that may still be tried, 0 or more, when so many have been. */
    long movesLeft(long movesTried) {
        return Math.max(0, moves.orElse(Long.MAX_VALUE) - movesTried);
    }

    /** Whether nothing more may be tried when so many moves have been. */
    boolean reached(long movesTried) {
        return end(movesLeft(movesTried)).isEmpty();
    }

    /** The end of an annealing after so many moves, or earlier by the clock; empty when it need not begin. */
    Optional<TerminationConfig> end(long mostMoves) {
        if (mostMoves <= 0) {
            return Optional.empty();
        }
        TerminationConfig end = new TerminationConfig().withMoveCountLimit(mostMoves);
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
