package freshfurrow.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.Drainage;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TopsoilTest {
    /** Air-dry at 10 mm, 14 mm of evaporable water of which 8 at the full rate, half of what is over field capacity drains in a day. */
    private static final Topsoil SOIL = new Topsoil(20, 24, 40, 8, 80, 1 / (Math.log(2) / Math.log(10)), 0.95);

    @Test
    void rainGoesInUnlessItRunsOffOrFindsNoRoom() {
        // 10 mm is less than 0.2 x 63.5 mm of abstraction; from 35 mm there is room for 5
        assertThat(SOIL.wetted(20, 10)).isEqualTo(30);
        assertThat(SOIL.wetted(35, 10)).isEqualTo(40);
    }

    @Test
    void halfOfTheWaterAboveFieldCapacityDrains() {
        assertThat(SOIL.dried(32, 0)).isCloseTo(24 + 8 / 2.0, within(1e-9));
    }

    @Test
    void wetSoilGivesOffWaterAtTheFullRate() {
        assertThat(SOIL.dried(24, 5)).isCloseTo(19, within(1e-9));
    }

    @Test
    void drySoilGivesOffWaterInProportionToWhatIsLeft() {
        // at 16 mm the readily evaporable water is gone; of the 6 mm left, 6 (1 - e^(-3/6)) evaporate when 3 mm could
        assertThat(SOIL.dried(16, 3)).isCloseTo(10 + 6 * Math.exp(-0.5), within(1e-9));
    }

    @Test
    void aDayMayBeginAtTheFullRateAndEndBelowIt() {
        // 2 mm at the full rate, then 3 mm of demand on 6 mm
        assertThat(SOIL.dried(18, 5)).isCloseTo(10 + 6 * Math.exp(-0.5), within(1e-9));
    }

    @Test
    void theLimitIsAShareOfFieldCapacity() {
        assertThat(SOIL.limitMm()).isCloseTo(0.95 * 24, within(1e-9));
    }

    @Property
    void waterStaysBetweenNothingAndSaturation(
            @ForAll Drainage drainage,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 0, max = 500) double rain,
            @ForAll @DoubleRange(min = 0, max = 15) double evaporation) {
        Topsoil soil = Topsoil.usual(drainage);
        double wetted = soil.wetted(share * soil.saturationMm(), rain);

        assertThat(wetted).isBetween(share * soil.saturationMm(), soil.saturationMm());
        assertThat(soil.dried(wetted, evaporation)).isBetween(0.0, wetted);
    }

    @Property
    void aWetterStartNeverEndsDrier(
            @ForAll Drainage drainage,
            @ForAll @DoubleRange(min = 0, max = 75) double water,
            @ForAll @DoubleRange(min = 0, max = 20) double more,
            @ForAll @DoubleRange(min = 0, max = 15) double evaporation) {
        Topsoil soil = Topsoil.usual(drainage);

        assertThat(soil.dried(water + more, evaporation))
                .isGreaterThanOrEqualTo(soil.dried(water, evaporation) - 1e-12);
    }
}
