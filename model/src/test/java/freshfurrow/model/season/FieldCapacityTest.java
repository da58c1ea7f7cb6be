package freshfurrow.model.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The effective field capacity of a planter against printed figures. */
class FieldCapacityTest {
    private static final double M_PER_FT = 0.3048;
    private static final double M_PER_S_PER_MPH = 1609.344 / 3600;
    private static final double M2_PER_ACRE = 4046.8564224;

    /**
     * Iowa State University Extension, PM 696 / Ag Decision Maker A3-24, on the field capacity of farm machines: printed rows of
     * several machines, one decimal.
     */
    @ParameterizedTest
    @CsvSource({
        "40, 6, 70, 20.4",
        "50, 6, 70, 25.5",
        "15, 5, 63, 5.7",
        "20, 6, 63, 9.2",
        "30, 6, 60, 13.1",
        "10, 5, 85, 5.2",
        "17.5, 5, 83, 8.8"
    })
    void isThePrintedOne(double widthFt, double mph, double percent, double acresPerHour) {
        assertThat(acresPerHour(widthFt, mph, percent / 100)).isCloseTo(acresPerHour, within(0.05));
    }

    /** An extension engineer's article in the trade press: 30 ft at 5 mph, 18.2 ac/h in theory, about 10.9 at 60 %. */
    @Test
    void ofAThirtyFootPlanterIsTheExtensionEngineers() {
        assertThat(acresPerHour(30, 5, 1)).isCloseTo(18.2, within(0.05));
        assertThat(acresPerHour(30, 5, 0.60)).isCloseTo(10.9, within(0.05));
    }

    /** ASABE EP496 and D497: C [ac/h] = S [mph] x W [ft] x E / 8.25, C [ha/h] = S [km/h] x W [m] x E / 10. */
    @Test
    void isThatOfTheFormulasInBothSystems() {
        assertThat(acresPerHour(40, 5.5, 0.65)).isCloseTo(5.5 * 40 * 0.65 / 8.25, within(1e-9));
        double hectaresPerHour = planter(6, 8 / 3.6, 0.65).fieldCapacityM2PerS() * 3600 / 10_000;
        assertThat(hectaresPerHour).isCloseTo(8 * 6 * 0.65 / 10, within(1e-12));
    }

    private static double acresPerHour(double widthFt, double mph, double efficiency) {
        return planter(widthFt * M_PER_FT, mph * M_PER_S_PER_MPH, efficiency).fieldCapacityM2PerS()
                * 3600
                / M2_PER_ACRE;
    }

    private static Planter planter(double widthM, double speedMPerS, double efficiency) {
        WorkHours hours = new WorkHours(List.of(new DaySpan(7 * 3600, 20 * 3600)));
        return WithDefaults.planter("P1", widthM, 0.76, speedMPerS, efficiency, 2000, 7, 360, 720, "yard", hours);
    }
}
