package freshfurrow.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class WrittenQuantityTest {
    @ParameterizedTest
    @CsvSource({
        "600 gal, 600, gal",
        "600gal, 600, gal",
        "20 gal/ac, 20, gal/ac",
        ".5 in, 0.5, in",
        "5. mph, 5, mph",
        "+6.5e2 L, 650, L",
        "-3 mm, -3, mm",
        "41.02, 41.02, ''"
    })
    void aFigureIsPartedFromTheUnitBehindIt(String text, double figure, String unit) {
        assertThat(WrittenQuantity.parse(text)).contains(new WrittenQuantity(figure, unit));
    }

    /** U+00A0 and U+202F come with text copied from documents and look like any space. */
    @ParameterizedTest
    @ValueSource(strings = {"600\u00a0gal", "\u00a0600 gal", "600\u202fgal"})
    void aNoBreakSpaceIsASpace(String text) {
        assertThat(WrittenQuantity.parse(text)).contains(new WrittenQuantity(600, "gal"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "gal", "1,000 gal", "1_000 gal", "1 000 gal", "6-8 mph", "1e999 L", "NaN", "Infinity", "--1"
            })
    void whatIsNoFigureWithOneUnitIsNone(String text) {
        assertThat(WrittenQuantity.parse(text)).isEmpty();
    }
}
