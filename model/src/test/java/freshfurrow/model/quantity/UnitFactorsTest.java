package freshfurrow.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors of units against those of NIST, Special Publication 811 (2008), appendix B, and Handbook 44, appendix C. The acre is
 * 43,560 square feet of 0.3048 m. The figures are from memory.
 */
class UnitFactorsTest {
    @ParameterizedTest
    @CsvSource({
        "VOLUME, gal, 3.785411784",
        "MASS, lb, 0.45359237",
        "LENGTH, in, 0.0254",
        "LENGTH, ft, 0.3048",
        "LENGTH, mi, 1609.344",
        "AREA, ac, 0.40468564224",
        "RAIN, in, 25.4",
        "SPEED, mph, 0.44704"
    })
    void exactFactorsAreExact(Kind kind, String symbol, double si) {
        assertThat(kind.toSi(1, symbol)).isCloseTo(si, within(si * 1e-12));
    }

    /** Printed with six or seven digits: 1 gal/ac = 9.35396 L/ha, 1 lb/ac = 1.12085 kg/ha, 1 gal/min = 6.309020e-5 m3/s. */
    @ParameterizedTest
    @CsvSource({
        "VOLUME_PER_AREA, gal/ac, 9.35396, 0.000005",
        "MASS_PER_AREA, lb/ac, 1.12085, 0.000005",
        "FLOW, gal/min, 0.06309020, 0.000000005"
    })
    void printedFactorsAgreeToTheLastDigit(Kind kind, String symbol, double si, double halfADigit) {
        assertThat(kind.toSi(1, symbol)).isCloseTo(si, within(halfADigit));
    }

    @ParameterizedTest
    @CsvSource({
        "VOLUME, m3, 1000",
        "MASS, t, 1000",
        "AREA, m2, 0.0001",
        "LENGTH, cm, 0.01",
        "SPEED, km/h, 0.277777777777778",
        "TIME, d, 86400",
        "FLOW, L/min, 0.0166666666666667",
        "FLOW, m3/h, 0.277777777777778",
        "VOLUME_PER_AREA, L/ha, 1",
        "MASS_PER_AREA, kg/ha, 1",
        "DRYING, d/mm, 1"
    })
    void metricFactorsArePowersOfTenAndHours(Kind kind, String symbol, double si) {
        assertThat(kind.toSi(1, symbol)).isCloseTo(si, within(si * 1e-12));
    }

    /** 2 d/in are 2 / 25.4 days a millimetre. */
    @Test
    void dryingIsDaysByDepth() {
        assertThat(Kind.DRYING.toSi(2, "d/in")).isCloseTo(2 / 25.4, within(1e-12));
    }

    @Test
    void whatIsShownIsWhatWasWritten() {
        Offset<Double> tiny = within(1e-12);
        assertThat(AreaUnit.ACRE.fromHectares(Kind.AREA.toSi(80, "ac"))).isCloseTo(80, tiny);
        assertThat(VolumeUnit.GALLON.fromLitres(Kind.VOLUME.toSi(600, "gal"))).isCloseTo(600, within(1e-9));
        assertThat(MassUnit.POUND.fromKilograms(Kind.MASS.toSi(30, "lb"))).isCloseTo(30, tiny);
        assertThat(DistanceUnit.MILE.fromKilometres(Kind.LENGTH.toSi(3, "mi") / 1000))
                .isCloseTo(3, tiny);
    }
}
