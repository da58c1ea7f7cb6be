package freshfurrow.solver.search;

import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * When a search ends at the latest.
 *
 * @param stop once set, with the best so far; by the clock, or from without
 * @param moves number of moves to try: the same result on every run
 */
public record SearchLimits(StopSignal stop, OptionalLong moves) {
    /** A search of so many moves, 0 or more. */
    public static SearchLimits moves(long moves) {
        return new SearchLimits(StopSignal.untilTold(), OptionalLong.of(moves));
    }

    /** A search for so long from now on. */
    public static SearchLimits time(Duration time) {
        return new SearchLimits(
                StopSignal.untilTold().noLaterThan(System.nanoTime() + time.toNanos()), OptionalLong.empty());
    }

    /** The same, but with only a part of the time that is left by the clock. */
    SearchLimits share(double part) {
        return new SearchLimits(stop.within(part), moves);
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
        if (mostMoves <= 0 || stop.isSet()) {
            return Optional.empty();
        }
        TerminationConfig end = new TerminationConfig().withMoveCountLimit(mostMoves);
        stop.left().ifPresent(left -> end.withMillisecondsSpentLimit(Math.max(1, left.toMillis())));
        return Optional.of(end);
    }
}
