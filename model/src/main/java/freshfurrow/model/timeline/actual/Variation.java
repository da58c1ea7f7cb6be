package freshfurrow.model.timeline.actual;

import freshfurrow.model.season.TimeSpread;
import java.util.Arrays;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * By what factor one kind of work of one machine takes longer than by the season: lognormal with a mean of 1. ln(factor) is normal with variance
 * ln(1 + c^2) for a coefficient of variation c, and half of that below 0 (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.9). A
 * part of the variance is common to all of the machine's day.
 */
final class Variation {
    private final double sigma;
    private final long key;
    private final double[] ofDay;

    Variation(double coefficient, long key, int days) {
        this.sigma = Math.sqrt(Math.log1p(coefficient * coefficient));
        this.key = key;
        this.ofDay = new double[coefficient == 0 ? 0 : days];
        Arrays.fill(ofDay, Double.NaN);
    }

    /** Of a piece of work that begins at a time, s; 1 where nothing varies. */
    double factor(int day, int startS) {
        if (ofDay.length == 0) {
            return 1;
        }
        double own = Math.sqrt(1 - TimeSpread.DAYS_SHARE) * normal(KeyedRandom.key(key, startS));
        return Math.exp(sigma * (ofDay(Math.min(day, ofDay.length - 1)) + own) - sigma * sigma / 2);
    }

    private double ofDay(int day) {
        if (Double.isNaN(ofDay[day])) {
            ofDay[day] = Math.sqrt(TimeSpread.DAYS_SHARE) * normal(KeyedRandom.key(~key, day));
        }
        return ofDay[day];
    }

    private static double normal(long key) {
        return ZigguratSampler.NormalizedGaussian.of(KeyedRandom.of(key)).sample();
    }
}
