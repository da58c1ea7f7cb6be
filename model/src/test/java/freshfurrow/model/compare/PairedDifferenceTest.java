package freshfurrow.model.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PairedDifferenceTest {
    /**
     * Student, 'The probable error of a mean', Biometrika 6 (1908): hours of sleep gained by ten patients with two drugs (data of
     * Cushny and Peebles, 1905). Mean of the differences 1.58, 95 % interval 0.7001142 to 2.4598858, as the manual of the language R
     * prints for its data set 'sleep' (from memory).
     */
    @Test
    void studentsSleepDataGiveThePrintedInterval() {
        double[] first = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
        double[] second = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

        PairedDifference difference = PairedDifference.of(first, second);

        assertThat(difference.mean()).isCloseTo(1.58, within(1e-9));
        assertThat(difference.lower()).isCloseTo(0.7001142, within(1e-7));
        assertThat(difference.upper()).isCloseTo(2.4598858, within(1e-7));
        assertThat(difference.toldApart()).isTrue();
        assertThat(difference.more()).isEqualTo(9);
        assertThat(difference.same()).isEqualTo(1);
        assertThat(difference.less()).isZero();
    }

    /** t of 9 degrees of freedom at 0.975 is 2.262: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2 (from memory). */
    @Test
    void theIntervalIsAsWideAsTheTableOfStudentsTSays() {
        double[] zero = new double[10];
        double[] oneToTen = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};

        PairedDifference difference = PairedDifference.of(zero, oneToTen);

        // variance of 1 to 10 is 82.5 / 9; half the width is 2.262 x sqrt(82.5 / 9 / 10) = 2.1657
        assertThat(difference.upper() - difference.mean()).isCloseTo(2.1657, within(0.0005));
    }

    @Test
    void differencesOfBothSignsThatCancelAreNotToldApart() {
        PairedDifference difference = PairedDifference.of(new double[] {10, 10, 10, 10}, new double[] {9, 11, 8, 12});

        assertThat(difference.mean()).isZero();
        assertThat(difference.toldApart()).isFalse();
    }

    @Test
    void aDifferenceThatIsTheSameInAllSpringsIsCertain() {
        PairedDifference difference = PairedDifference.of(new double[] {5, 7, 9}, new double[] {4, 6, 8});

        assertThat(difference).isEqualTo(new PairedDifference(-1, -1, -1, 3, 0, 0));
        assertThat(difference.toldApart()).isTrue();
    }

    @Test
    void noDifferenceInAnySpringIsNone() {
        PairedDifference difference = PairedDifference.of(new double[] {5, 7}, new double[] {5, 7});

        assertThat(difference).isEqualTo(new PairedDifference(0, 0, 0, 0, 2, 0));
        assertThat(difference.toldApart()).isFalse();
    }

    @Test
    void oneSpringTellsNothing() {
        assertThatThrownBy(() -> PairedDifference.of(new double[] {5}, new double[] {6}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two springs");
    }
}
