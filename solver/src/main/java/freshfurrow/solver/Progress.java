package freshfurrow.solver;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How far planning is, and the best plan so far in figures.
 *
 * @param timeLeft at the most; empty when planning ends by steps
 * @param fills of the planters
 * @param lateHaDays area planted after its window times days after, unweighted
 * @param unservedHa ha
 * @param leastFills that any plan needs that leaves as much unserved; empty until that is proven, and where fields may go without extract
 */
public record Progress(
        Optional<Duration> timeLeft, int fills, double lateHaDays, double unservedHa, OptionalInt leastFills) {}
