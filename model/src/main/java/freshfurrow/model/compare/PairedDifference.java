package freshfurrow.model.compare;

import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;
import org.apache.commons.statistics.interval.Interval;
import org.apache.commons.statistics.interval.NormalConfidenceInterval;

/**
 * A variant less the base, spring by spring: both lived through the same weather, so that what weather does to both cancels out.
 *
 * @param mean of the differences
 * @param lower end of the 95 % confidence interval of the mean: Student's t on the differences; likewise {@code upper}
 * @param less springs in which the variant has less; likewise {@code same} and {@code more}
 */
public record PairedDifference(double mean, double lower, double upper, int less, int same, int more) {
    private static final double ERROR_RATE = 0.05;

    /**
     * Of two rows of figures of the same springs.
     *
     * @throws IllegalArgumentException when the rows differ in length or hold fewer than two springs
     */
    public static PairedDifference of(double[] base, double[] variant) {
        if (base.length != variant.length || base.length < 2) {
            throw new IllegalArgumentException(
                    "pairs of two springs or more, not " + base.length + " and " + variant.length);
        }
        double[] differences = new double[base.length];
        int less = 0;
        int more = 0;
        for (int i = 0; i < base.length; i++) {
            differences[i] = variant[i] - base[i];
            less += variant[i] < base[i] ? 1 : 0;
            more += variant[i] > base[i] ? 1 : 0;
        }
        DoubleStatistics statistics = DoubleStatistics.of(Statistic.MEAN, Statistic.VARIANCE);
        for (double difference : differences) {
            statistics.accept(difference);
        }
        double mean = statistics.getAsDouble(Statistic.MEAN);
        double variance = statistics.getAsDouble(Statistic.VARIANCE);
        int same = base.length - less - more;
        if (!(variance > 0)) {
            return new PairedDifference(mean, mean, mean, less, same, more);
        }
        Interval interval = NormalConfidenceInterval.MEAN.fromErrorRate(mean, variance, differences.length, ERROR_RATE);
        return new PairedDifference(mean, interval.getLowerBound(), interval.getUpperBound(), less, same, more);
    }

    /** Whether the springs tell the two apart: 0 lies outside the interval. */
    public boolean toldApart() {
        return lower > 0 || upper < 0;
    }
}
