package freshfurrow.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the worked examples of Allen, Pereira, Raes and Smith, FAO Irrigation and Drainage Paper 56 (1998). */
class EvapotranspirationTest {
    @Test
    void radiationIsThatOfExample8() {
        // 20 degrees south on 3 September, day 246: 32.2 MJ/(m2 d)
        assertThat(ExtraterrestrialRadiation.mjPerM2(-20, 246)).isCloseTo(32.2, within(0.05));
    }

    @ParameterizedTest(name = "{1} degrees on day {0}")
    @CsvSource({"187, 50.8, 41.09", "105, 13.73, 38.06"})
    void radiationIsThatOfExamples17And18(int dayOfYear, double latitude, double expected) {
        // Uccle, 50 degrees 48 minutes north, 6 July; Bangkok, 13 degrees 44 minutes north, 15 April
        assertThat(ExtraterrestrialRadiation.mjPerM2(latitude, dayOfYear)).isCloseTo(expected, within(0.02));
    }

    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({
        " 0, 36.2 37.5 37.9 36.8 34.8 33.4 33.9 35.7 37.2 37.4 36.3 35.6",
        "40, 15.0 20.4 27.2 34.7 39.7 41.9 40.8 36.7 30.0 22.5 16.3 13.6",
    })
    void radiationInTheMiddleOfTheMonthsIsThatOfAnnex2(double latitude, String byMonth) {
        // table 2.6; its values are for the 15th of each month
        String[] printed = byMonth.split(" ", -1);
        for (int month = 1; month <= 12; month++) {
            int dayOfYear = LocalDate.of(2027, month, 15).getDayOfYear();
            assertThat(ExtraterrestrialRadiation.mjPerM2(latitude, dayOfYear))
                    .as("month %d", month)
                    .isCloseTo(Double.parseDouble(printed[month - 1]), within(0.25));
        }
    }

    @Test
    void noSunShinesInThePolarNight() {
        assertThat(ExtraterrestrialRadiation.mjPerM2(80, 355)).isZero();
        assertThat(ExtraterrestrialRadiation.mjPerM2(80, 172)).isPositive();
    }

    @Test
    void referenceEvapotranspirationIsThatOfExample20() {
        // Lyon, 45 degrees 43 minutes north, mid July: 26.6 and 14.8 °C give 5.0 mm/d
        double radiation = ExtraterrestrialRadiation.mjPerM2(45.72, 196);

        assertThat(radiation).isCloseTo(40.6, within(0.1));
        assertThat(Hargreaves.referenceMm(26.6, 14.8, radiation)).isCloseTo(5.0, within(0.05));
    }

    @Test
    void frostTakesNoWaterAway() {
        assertThat(Hargreaves.referenceMm(-20, -30, 15)).isZero();
    }
}
