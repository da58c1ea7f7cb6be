package freshfurrow.cli.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.text.Figures;
import freshfurrow.model.quantity.DisplayUnits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class BucketsTest {
    /** Buckets of 10 kg. */
    @ParameterizedTest
    @CsvSource({
        "10, 1 bucket",
        "20, 2 buckets",
        "9.9, 1 bucket",
        "10.1, 1 bucket",
        "26, 2 buckets + 6 kg",
        "19.5, 1 bucket + 9.5 kg",
        "6, less than a bucket",
        "0.1, less than a bucket"
    })
    void compostIsCountedInFullBucketsAndARest(double kg, String text) {
        assertThat(Buckets.of(kg, 10).text(new Figures(DisplayUnits.METRIC))).isEqualTo(text);
    }
}
