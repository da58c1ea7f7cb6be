package freshfurrow.model.weather.generator;

/**
 * Rain of one month in the form of Richardson and Wright, <i>WGEN: A model for generating daily weather variables</i>, USDA ARS-8
 * (1984): whether a day is wet is a first-order Markov chain of two states, and a wet day's amount has a gamma distribution.
 *
 * @param wetAfterWet probability of a wet day after a wet one, P(W|W), 0 to 1
 * @param wetAfterDry probability of a wet day after a dry one, P(W|D), 0 to 1
 * @param shape of the gamma distribution, above 0
 * @param scaleMm of the gamma distribution, mm, above 0
 */
public record RainClimate(double wetAfterWet, double wetAfterDry, double shape, double scaleMm) {
    public RainClimate {
        if (!(wetAfterWet >= 0
                && wetAfterWet <= 1
                && wetAfterDry >= 0
                && wetAfterDry <= 1
                && shape > 0
                && scaleMm > 0)) {
            throw new IllegalArgumentException("no such rain climate");
        }
    }

    /** Long-run share of wet days: P(W|D) / (1 + P(W|D) - P(W|W)). */
    public double shareOfWetDays() {
        return wetAfterDry == 0 ? 0 : wetAfterDry / (1 + wetAfterDry - wetAfterWet);
    }

    /** Mean of a wet day's amount, mm: shape x scale. */
    public double meanMm() {
        return shape * scaleMm;
    }

    /** Variance of a wet day's amount, mm2: shape x scale squared. */
    public double varianceMm2() {
        return shape * scaleMm * scaleMm;
    }
}
