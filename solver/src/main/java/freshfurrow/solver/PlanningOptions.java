package freshfurrow.solver;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How long to plan, and which of many equal searches to make.
 *
 * @param time by the clock, above 0; {@link #DEFAULT_TIME} when neither this nor {@code steps} is there
 * @param steps number of moves to try, 0 or more; with it alone, the same seed gives the same lists on every run
 * @param seed any number
 * @param threads how many to search on, 1 or more; more than {@link #DEFAULT_THREADS} bring nothing, and with steps the lists do
 *     not depend on it
 */
public record PlanningOptions(Optional<Duration> time, OptionalLong steps, long seed, int threads) {
    public static final Duration DEFAULT_TIME = Duration.ofSeconds(30);
    public static final int DEFAULT_THREADS = 2;

    public PlanningOptions {
        if (time.isPresent() && (time.get().isNegative() || time.get().isZero())) {
            throw new IllegalArgumentException("planning time must be above 0, not " + time.get());
        }
        if (steps.isPresent() && steps.getAsLong() < 0) {
            throw new IllegalArgumentException("steps must be 0 or more, not " + steps.getAsLong());
        }
        if (threads < 1) {
            throw new IllegalArgumentException("threads must be 1 or more, not " + threads);
        }
        if (time.isEmpty() && steps.isEmpty()) {
            time = Optional.of(DEFAULT_TIME);
        }
    }

    /** Options for {@link #DEFAULT_THREADS}. */
    public PlanningOptions(Optional<Duration> time, OptionalLong steps, long seed) {
        this(time, steps, seed, DEFAULT_THREADS);
    }
}
