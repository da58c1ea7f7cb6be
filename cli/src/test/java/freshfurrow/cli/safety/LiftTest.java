package freshfurrow.cli.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** NIOSH Publication 94-110: load constant 23 kg, horizontal multiplier 25/H with H in cm (table 1 of the manual). */
final class LiftTest {
    private static final double CM_PER_IN = 2.54;
    private static final double KG_PER_LB = 0.45359237;

    @ParameterizedTest
    @CsvSource({
        "25, 1.00",
        "28, 0.89",
        "30, 0.83",
        "32, 0.78",
        "40, 0.63",
        "50, 0.50",
        "60, 0.42",
        "63, 0.40",
        "64, 0.00"
    })
    void theLimitFollowsTheManualsTableOfHorizontalMultipliers(double reachCm, double multiplier) {
        assertThat(Lift.limitKg(reachCm) / 23).isCloseTo(multiplier, within(0.0051));
    }

    @Test
    void closerThanTheBestReachNoMoreMayBeLifted() {
        assertThat(Lift.limitKg(10)).isEqualTo(23);
    }

    @Test
    void fifteenInchesLeaveThirtyFourPounds() {
        // 51 lb x 10 in / 15 in = 34 lb; 23 kg are 50.7 lb and 25 cm are 9.84 in
        assertThat(Lift.limitKg(15 * CM_PER_IN) / KG_PER_LB).isCloseTo(34, within(0.8));
    }

    @Test
    void aBucketOfThirtyPoundsIsTooHeavyFromSixteenInchesOn() {
        // 23 kg x 25 cm / 13.608 kg = 42.3 cm = 16.6 in
        double bucketKg = 30 * KG_PER_LB;
        assertThat(Lift.farthestReachCm(bucketKg)).isCloseTo(42.3, within(0.05));
        assertThat(Lift.limitKg(Lift.farthestReachCm(bucketKg))).isCloseTo(bucketKg, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"22.9, false", "23, false", "23.1, true", "50, true"})
    void aboveTheLoadConstantNoLiftIsRecommended(double kg, boolean over) {
        assertThat(Lift.isOverAnyLimit(kg)).isEqualTo(over);
        assertThat(Lift.farthestReachCm(kg) == 0).isEqualTo(over);
    }
}
