package freshfurrow.model.compare;

import java.util.Optional;

/**
 * What a variant costs a season.
 *
 * @param season running and yearly costs together
 * @param difference of that to the base; empty for the base, and where there are fewer than two springs
 * @param breakEven how much the variant saves in running costs: what it may cost more a year than the base and still pay; empty
 *     likewise
 * @param yearlyExtra what its machines do cost more a year than the base's
 */
public record Money(
        Spread season, Optional<PairedDifference> difference, Optional<BreakEven> breakEven, double yearlyExtra) {

    /**
     * Running costs of the base less those of the variant, mean over the springs with its 95 % confidence interval.
     *
     * @param mean below 0 where the variant costs more to run; likewise {@code lower} and {@code upper}
     */
    public record BreakEven(double mean, double lower, double upper) {
        static BreakEven of(PairedDifference variantLessBase) {
            return new BreakEven(
                    0.0 - variantLessBase.mean(), 0.0 - variantLessBase.upper(), 0.0 - variantLessBase.lower());
        }
    }
}
