package freshfurrow.cli.card;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.season.Season;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** 200 L/ha at 4 m/s = 14.4 km/h over rows of 75 cm: 0.02 L/m2 x 4 m/s x 0.75 m = 0.06 L/s = 3.6 L/min. */
final class CalibrationCardTest {
    private static final Season SEASON = ExampleSeason.season();

    private static String card(
            OptionalDouble pressureKPa, OptionalDouble otherLPerHa, Optional<CalibrationOrder.Caught> caught) {
        return String.join(
                "\n",
                CalibrationCard.lines(
                        SEASON,
                        new CalibrationOrder(
                                Outlets.of(SEASON.planters().get(0)), 0, 4, 30, pressureKPa, otherLPerHa, caught)));
    }

    private static Optional<CalibrationOrder.Caught> caught(OptionalDouble distanceM, Double... litres) {
        return Optional.of(new CalibrationOrder.Caught(List.of(litres), distanceM));
    }

    @Test
    void flowCatchAndSpeedsAreToldWithTheirArithmetic() {
        assertThat(card(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()))
                .startsWith("""
                        CALIBRATION CARD   planter P1, recipe standard, season example
                        200 L/ha at 14.4 km/h, 10 m wide, rows 75 cm apart: 13.33 rows

                        Flow (for a liquid as thin as water)
                          Each row  3.6 L/min  = 200 L/ha x 14.4 km/h x 75 cm / 60,000
                          All rows  48 L/min   = 3.6 L/min x 13.33 rows

                        Catch from each row
                          Jar, 30 s        1,800 mL  = 3.6 L/min x 30 s / 60 x 1,000 mL/L
                          Over a distance  100 m
                            catch there    1,500 mL  = 200 L/ha x 100 m x 75 cm / 1,000
                            driven in      25 s      = 100 m / (14.4 km/h / 3.6)

                        At other speeds: the flow you need, and the rate you get if the flow stays the same
                          Speed      Row flow for 200 L/ha  In 30 s   Rate if the flow stays the same
                          11.4 km/h  2.85 L/min             1,425 mL  252.6 L/ha
                        """)
                .contains("  17.4 km/h  4.35 L/min             2,175 mL  165.5 L/ha")
                .contains("Keep everyone clear of a planter", "release the pressure")
                .endsWith(
                        "Local codes, manufacturers' manuals and licensed professionals come first. See docs/safety.md.")
                .doesNotContain("square-root", "Caught");
    }

    @Test
    void anotherRateTakesThePressureOfTheSquareRootLaw() {
        assertThat(card(OptionalDouble.of(400), OptionalDouble.of(150), Optional.empty()))
                .contains("For 150 L/ha  225 kPa  = 400 kPa x (150 L/ha / 200 L/ha)^2");
    }

    @Test
    void aCatchTellsErrorAndCorrection() {
        // 1.5 L of 1.8 L: 166.7 L/ha, 12 km/h; (1.8 / 1.5)^2 = 1.44
        String card = card(OptionalDouble.empty(), OptionalDouble.empty(), caught(OptionalDouble.empty(), 1.5));

        assertThat(card)
                .contains(
                        "Rate         166.7 L/ha  = 200 L/ha x 1,500 mL / 1,800 mL",
                        "Error        -16.7 %     = 1,500 mL / 1,800 mL - 1",
                        "New speed    12 km/h     = 14.4 km/h x 1,500 mL / 1,800 mL",
                        "or pressure  1.44 times  = 1 x (1,800 mL / 1,500 mL)^2")
                .doesNotContain("Spread");
        assertThat(card(OptionalDouble.of(100), OptionalDouble.empty(), caught(OptionalDouble.empty(), 1.5)))
                .contains("or pressure  144 kPa");
    }

    @Test
    void aCatchOverADistanceIsHeldAgainstWhatBelongsThere() {
        assertThat(card(OptionalDouble.empty(), OptionalDouble.empty(), caught(OptionalDouble.of(50), 0.75)))
                .contains("Wanted       750 mL", "Error        0.0 %");
    }

    @Test
    void rowsAreComparedWithTheirMean() {
        // mean 2 L, deviations -10, 0 and +10 %; standard deviation 0.2 L
        assertThat(card(OptionalDouble.empty(), OptionalDouble.empty(), caught(OptionalDouble.empty(), 1.8, 2.0, 2.2)))
                .contains(
                        "  1    1,800 mL  -10.0 %          check this row",
                        "  2    2,000 mL  0.0 %\n",
                        "  3    2,200 mL  +10.0 %          check this row",
                        "  Spread  10 %  = standard deviation 200 mL / average 2,000 mL (coefficient of variation)");
    }
}
