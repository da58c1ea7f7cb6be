package freshfurrow.model.weather.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Against the matrices that Richardson and Wright print in WGEN, USDA ARS-8 (1984). They have solar radiation as a third series, which
 * changes what the lowest temperature takes from the day before; the rows compared here hold without it.
 */
class ResidualsTest {
    private final Residuals residuals =
            new Residuals(new TemperatureClimate.Persistence(0.633, 0.621, 0.445, 0.563, 0.674));

    @Test
    void whatTheHighestTemperatureKeepsOfTheDayBeforeIsThatOfThePublishedMatrix() {
        assertThat(residuals.a11).isCloseTo(0.567, within(0.002));
        assertThat(residuals.a12).isCloseTo(0.086, within(0.002));
    }

    @Test
    void whatIsRandomIsThatOfThePublishedMatrix() {
        assertThat(residuals.b11).isCloseTo(0.781, within(0.002));
        assertThat(residuals.b21).isCloseTo(0.328, within(0.002));
        assertThat(residuals.b22).isCloseTo(0.637, within(0.02));
    }
}
