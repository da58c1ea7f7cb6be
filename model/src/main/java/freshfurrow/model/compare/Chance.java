package freshfurrow.model.compare;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;

/**
 * How often something came about, and the 95 % confidence interval of its chance by Wilson's score (Wilson, 'Probable inference, the
 * law of succession, and statistical inference', Journal of the American Statistical Association 22, 1927).
 *
 * @param springs in which it did
 * @param of springs in all, at least 1
 * @param lower 0 to 1; likewise {@code upper}
 */
public record Chance(int springs, int of, double lower, double upper) {
    private static final double ERROR_RATE = 0.05;

    /** So many springs in which it did, 0 to {@code of}. */
    public static Chance of(int springs, int of) {
        Interval interval = BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(of, springs, ERROR_RATE);
        return new Chance(springs, of, interval.getLowerBound(), interval.getUpperBound());
    }

    /** Share of springs in which it did, 0 to 1. */
    public double share() {
        return (double) springs / of;
    }
}
