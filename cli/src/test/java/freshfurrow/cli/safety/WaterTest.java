package freshfurrow.cli.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The density of water against the table that the CIPM recommends. */
final class WaterTest {
    private static final double LB_PER_KG = 1 / 0.45359237;
    private static final double L_PER_GAL = 3.785411784;

    /** Tanaka and others, Metrologia 38 (2001) 301-309, equation 1 and table 1; in kg/m3. */
    @ParameterizedTest
    @CsvSource({"0, 999.843", "4, 999.975", "10, 999.703", "15, 999.103", "20, 998.207", "25, 997.048", "30, 995.649"})
    void noWaterIsHeavierThanWeSayAndNoneHalfAPercentLighter(double celsius, double table) {
        double formula = 999.974950
                * (1 - Math.pow(celsius - 3.983035, 2) * (celsius + 301.797) / (522_528.9 * (celsius + 69.34881)));
        assertThat(formula).as("the formula gives the table").isCloseTo(table, within(0.001));
        assertThat(Water.HEAVIEST_KG_PER_L * 1_000)
                .isGreaterThanOrEqualTo(Math.floor(formula * 1000) / 1000)
                .isLessThan(formula * 1.005);
    }

    /** NIST Handbook 44, appendix C: a US gallon is 3.785411784 L, a pound 0.45359237 kg. */
    @ParameterizedTest
    @CsvSource({"1, 8.345", "1200, 10014.2"})
    void gallonsWeighTheirPounds(double gallons, double pounds) {
        assertThat(Water.kilograms(gallons * L_PER_GAL) * LB_PER_KG).isCloseTo(pounds, within(0.05));
    }
}
