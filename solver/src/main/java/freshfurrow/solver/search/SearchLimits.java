package freshfurrow.solver.search;

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

    /** Time left, ms, 0 or more; empty when there is no limit by the clock. */
    OptionalLong leftMs() {
        return deadlineNs.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of(Math.max(0, (deadlineNs.getAsLong() - System.nanoTime()) / 1_000_000));
    }
}
