package freshfurrow.solver;

import java.time.Duration;
import java.util.Optional;

/**
 * How far planning is, and the best plan so far in figures.
 *
 * @param timeLeft at the most; empty when planning ends by steps
 * @param fills of the planters
 * @param lateHaDays area planted after its window times days after, unweighted
 * @param unservedHa ha
 */
public record Progress(Optional<Duration> timeLeft, int fills, double lateHaDays, double unservedHa) {}
