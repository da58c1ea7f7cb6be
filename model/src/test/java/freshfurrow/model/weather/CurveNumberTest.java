package freshfurrow.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurveNumberTest {
    private static final double MM_PER_INCH = 25.4;

    @Test
    void runoffIsThatOfTheWorkedSolution() {
        // USDA NRCS, National Engineering Handbook, part 630, chapter 10: CN 80, P 8 in, S 2.5 in: 7.5^2 / 10 = 5.625
        // in
        assertThat(CurveNumber.runoffMm(8 * MM_PER_INCH, 80) / MM_PER_INCH).isCloseTo(5.625, within(1e-9));
    }

    @ParameterizedTest(name = "{0} in on curve number {1}")
    @CsvSource({"4.0, 80, 2.04", "3.0, 75, 0.96", "2.0, 85, 0.80"})
    void runoffIsThatOfTheTable(double inches, double curveNumber, double printed) {
        // USDA, Technical Release 55 (1986), table 2-1
        assertThat(CurveNumber.runoffMm(inches * MM_PER_INCH, curveNumber) / MM_PER_INCH)
                .isCloseTo(printed, within(0.005));
    }

    @Test
    void rainUpToTheInitialAbstractionDoesNotRunOff() {
        // CN 80: 0.2 x 2.5 in = 0.5 in
        assertThat(CurveNumber.runoffMm(0.5 * MM_PER_INCH, 80)).isZero();
        assertThat(CurveNumber.runoffMm(0.51 * MM_PER_INCH, 80)).isPositive();
    }

    @Test
    void allRunsOffWhereNothingIsRetained() {
        assertThat(CurveNumber.runoffMm(30, 100)).isEqualTo(30);
        assertThat(CurveNumber.runoffMm(0, 100)).isZero();
    }
}
