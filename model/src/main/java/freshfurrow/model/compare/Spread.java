package freshfurrow.model.compare;

import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.Quantile;

/**
 * How a figure spreads over springs: one in ten is below {@code low}, one in ten above {@code high}. Quantiles by definition 8 of
 * Hyndman and Fan, 'Sample quantiles in statistical packages', The American Statistician 50 (1996), which they recommend.
 */
public record Spread(double low, double median, double high, double mean) {
    private static final double[] TENTH_HALF_NINE_TENTHS = {0.1, 0.5, 0.9};

    /** Of the figures of one spring or more. */
    public static Spread of(double[] figures) {
        double[] quantiles = Quantile.withDefaults()
                .withCopy(true)
                .with(Quantile.EstimationMethod.HF8)
                .evaluate(figures, TENTH_HALF_NINE_TENTHS);
        return new Spread(
                quantiles[0], quantiles[1], quantiles[2], Mean.of(figures).getAsDouble());
    }
}
