package freshfurrow.model.supply;

import org.apache.commons.statistics.descriptive.Quantile;

/**
 * A share of springs in which something is to be enough.
 *
 * @param share above 0, below 1
 */
public record SureShare(double share) {
    public SureShare {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("a share is above 0 and below 1, not " + share);
        }
    }

    /**
     * What is enough in that share of springs: the least of the springs' own figures that so many of them do not go above (Hyndman and
     * Fan's definition 1), so that it is enough in at least that share.
     */
    double enough(double[] springs) {
        return Quantile.withDefaults()
                .withCopy(true)
                .with(Quantile.EstimationMethod.HF1)
                .evaluate(springs, share);
    }
}
