package freshfurrow.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.USCustomary;

/**
 * Conversion factors of NIST Special Publication 811, Guide for the Use of the International System of Units (2008), appendix B, and
 * NIST Handbook 44, appendix C; the figures are from memory of these publications. The acre is the international one.
 */
final class PublishedFactorsTest {
    @ParameterizedTest
    @CsvSource({
        "VOLUME, gal, 3.785411784",
        "MASS, lb, 0.45359237",
        "MASS, t, 1000",
        "LENGTH, in, 0.0254",
        "LENGTH, ft, 0.3048",
        "LENGTH, mi, 1609.344",
        "RAIN, in, 25.4",
        "AREA, ac, 0.40468564224",
        "AREA, m2, 0.0001",
        "SPEED, mph, 0.44704",
        "SPEED, km/h, 0.277777777777777778",
        "TIME, h, 3600",
        "TIME, d, 86400",
        "FLOW, gal/min, 0.0630901964",
        "FLOW, m3/h, 0.277777777777777778",
        "CAUGHT_VOLUME, floz, 0.0295735295625",
        "CAUGHT_VOLUME, mL, 0.001",
        "PRESSURE, bar, 100"
    })
    void aUnitIsExactlyAsPublished(Kind kind, String unit, double factor) {
        assertThat(kind.toSi(1, unit)).isCloseTo(factor, within(factor * 1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "VOLUME_PER_AREA, gal/ac, 9.35396",
        "VOLUME_PER_AREA, gal/ha, 3.785412",
        "VOLUME_PER_AREA, L/ac, 2.47105",
        "MASS_PER_AREA, lb/ac, 1.12085",
        "MASS_PER_AREA, lb/ha, 0.4535924",
        "MASS_PER_AREA, kg/ac, 2.47105",
        "PRESSURE, psi, 6.894757",
        "DRYING, d/in, 0.0393701",
        "TIME_PER_MASS, min/lb, 2.20462",
        "TIME_PER_AREA, min/ac, 2.47105"
    })
    void aRateIsAsPublishedToSixDigits(Kind kind, String unit, double factor) {
        assertThat(kind.toSi(1, unit)).isCloseTo(factor, within(factor * 1e-5));
    }

    /** 32 °F is 0 °C and 212 °F is 100 °C: the same publication, appendix B.8. */
    @Test
    void waterFreezesAndBoilsAtThePublishedDegrees() {
        assertThat(Kind.TEMPERATURE.toSi(32, "F")).isCloseTo(0, within(1e-9));
        assertThat(Kind.TEMPERATURE.toSi(212, "F")).isCloseTo(100, within(1e-9));
        assertThat(Kind.TEMPERATURE.toSi(-40, "C")).isEqualTo(-40);
    }

    /** An acre is 43,560 square feet and 4,046.8564224 m2. */
    @Test
    void anAcreIsTenSquareChains() {
        assertThat(Kind.AREA.toSi(1, "ac") * 10_000).isCloseTo(4046.8564224, within(1e-9));
        assertThat(43_560 * 0.3048 * 0.3048).isCloseTo(4046.8564224, within(1e-9));
    }

    /** The units of systems.uom, a library of units of the United States. */
    @Test
    void customaryUnitsAgreeToTheLastBitWithALibraryOfThem() throws IncommensurableException {
        Map<Unit<?>, Unit<?>> libraryUnits = Map.of(
                KnownUnits.FOOT, USCustomary.FOOT,
                KnownUnits.INCH, USCustomary.INCH,
                KnownUnits.MILE, USCustomary.MILE,
                KnownUnits.MILE_PER_HOUR, USCustomary.MILE_PER_HOUR,
                KnownUnits.ACRE, USCustomary.FOOT.pow(2).multiply(43_560),
                KnownUnits.GALLON, USCustomary.GALLON_LIQUID,
                KnownUnits.POUND, USCustomary.POUND,
                KnownUnits.FAHRENHEIT, USCustomary.FAHRENHEIT);
        for (Map.Entry<Unit<?>, Unit<?>> units : libraryUnits.entrySet()) {
            Unit<?> own = units.getKey();
            assertThat(own.getConverterToAny(own.getSystemUnit()).convert(37.3))
                    .isEqualTo(units.getValue()
                            .getConverterToAny(own.getSystemUnit())
                            .convert(37.3));
        }
    }

    @Test
    void unitsOfResultsAgreeWithTheUnitsLibrary() {
        for (AreaUnit unit : AreaUnit.values()) {
            assertThat(unit.fromHectares(Kind.AREA.toSi(7, unit.symbol()))).isCloseTo(7, within(1e-12));
        }
        for (VolumeUnit unit : VolumeUnit.values()) {
            assertThat(unit.fromLitres(Kind.VOLUME.toSi(7, unit.symbol()))).isCloseTo(7, within(1e-12));
        }
        for (MassUnit unit : MassUnit.values()) {
            assertThat(unit.fromKilograms(Kind.MASS.toSi(7, unit.symbol()))).isCloseTo(7, within(1e-12));
        }
        for (DistanceUnit unit : DistanceUnit.values()) {
            assertThat(unit.fromKilometres(Kind.LENGTH.toSi(7, unit.symbol()) / 1000))
                    .isCloseTo(7, within(1e-12));
        }
    }
}
