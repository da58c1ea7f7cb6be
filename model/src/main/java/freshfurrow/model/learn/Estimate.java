package freshfurrow.model.learn;

import java.util.OptionalDouble;

/**
 * A figure by a log, in the unit of {@link Taught}.
 *
 * @param mean what the season file's figure is to be compared with: at it, work takes as long as it took on average; of drying and of spreads, the median
 * @param median at it, half of the work took longer
 * @param low lower end of the 95 % interval of {@code mean}
 * @param high its upper end
 * @param spread coefficient of variation of the time that a piece of work takes, 0 or more; empty for drying and spreads
 */
public record Estimate(double mean, double median, double low, double high, OptionalDouble spread) {}
