package freshfurrow.model.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {
    /**
     * Newcombe, 'Two-sided confidence intervals for the single proportion', Statistics in Medicine 17 (1998), table I, score method
     * without correction (from memory).
     */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0, 0.1611", "1, 29, 0.0061, 0.1718"})
    void theIntervalIsWilsonsScoreAsPrinted(int springs, int of, double lower, double upper) {
        Chance chance = Chance.of(springs, of);

        assertThat(chance.share()).isCloseTo((double) springs / of, within(1e-12));
        assertThat(chance.lower()).isCloseTo(lower, within(0.00006));
        assertThat(chance.upper()).isCloseTo(upper, within(0.00006));
    }
}
