package freshfurrow.model.timeline.actual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;

class VariationTest {
    private static final int DAYS = 40;
    private static final int SEASONS = 5_000;

    /** Coefficient of variation of a lognormal: sqrt(exp(sigma^2) - 1), mean exp(mu + sigma^2 / 2): NIST/SEMATECH e-Handbook, 1.3.6.6.9 (from memory). */
    @Test
    void factorsAreLognormalWithAMeanOfOneAndTheCoefficientOfVariation() {
        double c = 0.3;
        double sigma = Math.sqrt(Math.log(1 + c * c));
        LogNormalDistribution published = LogNormalDistribution.of(-sigma * sigma / 2, sigma);
        assertThat(published.getMean()).isCloseTo(1, within(1e-12));
        assertThat(Math.sqrt(published.getVariance())).isCloseTo(c, within(1e-12));

        double[] below = {0.1, 0.25, 0.5, 0.75, 0.9};
        int[] counts = new int[below.length];
        double sum = 0;
        double squares = 0;
        for (int season = 0; season < SEASONS; season++) {
            double factor = new Variation(c, KeyedRandom.key(season, 1), DAYS).factor(3, 100);
            sum += factor;
            squares += factor * factor;
            for (int i = 0; i < below.length; i++) {
                counts[i] += factor <= published.inverseCumulativeProbability(below[i]) ? 1 : 0;
            }
        }
        double mean = sum / SEASONS;
        assertThat(mean).isCloseTo(1, within(4 * c / Math.sqrt(SEASONS)));
        assertThat(Math.sqrt(squares / SEASONS - mean * mean)).isCloseTo(c, within(0.02));
        for (int i = 0; i < below.length; i++) {
            double deviation = Math.sqrt(below[i] * (1 - below[i]) / SEASONS);
            assertThat((double) counts[i] / SEASONS).isCloseTo(below[i], within(4 * deviation));
        }
    }

    @Test
    void halfOfTheVarianceIsTheDays() {
        double sameDay = 0;
        double otherDay = 0;
        double all = 0;
        for (int season = 0; season < SEASONS; season++) {
            Variation variation = new Variation(0.2, KeyedRandom.key(season, 1), DAYS);
            double one = log(variation.factor(3, 100));
            all += one * one;
            sameDay += one * log(variation.factor(3, 2_000));
            otherDay += one * log(variation.factor(4, 100_000));
        }
        assertThat(sameDay / all).isCloseTo(0.5, within(0.06));
        assertThat(otherDay / all).isCloseTo(0, within(0.06));
    }

    /** Without its mean. */
    private static double log(double factor) {
        double sigma2 = Math.log(1 + 0.2 * 0.2);
        return Math.log(factor) + sigma2 / 2;
    }

    @Test
    void withoutSpreadTheFactorIsOne() {
        assertThat(new Variation(0, 7, DAYS).factor(3, 100)).isEqualTo(1);
    }

    @Test
    void theSameWorkTakesTheSameWhateverWasAskedBefore() {
        Variation one = new Variation(0.2, 7, DAYS);
        Variation other = new Variation(0.2, 7, DAYS);
        other.factor(5, 9);
        other.factor(3, 4);

        assertThat(other.factor(3, 100)).isEqualTo(one.factor(3, 100));
    }
}
