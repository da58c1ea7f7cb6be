package freshfurrow.cli.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.mixing.HoseFlow;
import freshfurrow.model.mixing.SmallPlot;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Cards for a boom and for a hose, against published figures of sprayer calibration. */
final class SprayerCardsTest {
    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double MPH = 0.44704;
    private static final double GALLON = 3.785411784;
    private static final double ACRE_M2 = 4046.8564224;
    private static final double GALLON_PER_ACRE = GALLON / ACRE_M2 * 10_000;

    @Test
    void aBoomIsCalibratedANozzleAtATime() {
        // Ohio State University Extension, AEX-520: nozzles 20 in apart, 204 ft are 1/128 of an acre
        // Albany County Weed and Pest: 20 gal/ac at 5 mph over 222 in take 3.75 gal/min (seen to two decimals)
        String card = boom(20, 222 * INCH, 20 * INCH, 5 * MPH);

        assertThat(card)
                .contains("sprayer S1", "nozzles 20 in apart: 11.1 nozzles", "Each nozzle", "Catch from each nozzle")
                .contains("1/128 acre     204.2 ft")
                .contains("catch there  20 fl oz     ounces caught = gallons per acre")
                .contains("All nozzles  3.737 gal/min")
                .contains("Nozzle flow for 20 gal/ac", Cautions.DRIFT, Cautions.LABELS)
                .doesNotContain("planter", "row");
    }

    @Test
    void aHoseGivesAsManyOuncesInTheTimeOf128thOfAnAcreAsGallonsToTheAcre() {
        // 43,560 sq ft / 128 = 340.3 sq ft (Ohio State University Extension, AEX-520)
        assertThat(SmallPlot.AREA_M2 / (FOOT * FOOT)).isCloseTo(340.3, within(0.05));
        // 2 ac/h: 1/128 ac in 3,600 / 2 / 128 = 14.0625 s; 20 gal/ac x 2 ac/h / 60 = 0.6667 gal/min
        String card = hose(20, OptionalDouble.empty(), Optional.empty());

        assertThat(card)
                .startsWith(
                        "CALIBRATION CARD   sprayer H1, recipe standard, season example\n20 gal/ac by a hose at 2 ac/h\n")
                .contains("Hose          0.6667 gal/min  = 20 gal/ac x 2 ac/h / 60 min/h")
                .contains("Catch, 1 min  0.6667 gal      = 0.6667 gal/min x 60 s / 60")
                .contains("1/128 acre            340.3 sq ft  = 43,560 sq ft / 128")
                .contains("sprayed in          14.06 s")
                .contains("catch in that time  20 fl oz     ounces caught = gallons per acre")
                .contains(Cautions.DRIFT, Cautions.LABELS)
                .doesNotContain("Measured");
    }

    @Test
    void aCatchAndATimedAreaTellTheRateAndHowFastToWalk() {
        // common practice, no source: 2 ac by hand in about 10 min, which is 12 ac/h; with 4 gal/min that is 20 gal/ac
        String right = hose(20, OptionalDouble.of(4 * GALLON), Optional.of(new HoseOrder.Timed(2 * ACRE_M2, 600)));
        assertThat(right).contains("Flow             4 gal/min", "Covered          12 ac/h", "Error            0.0 %");

        // 3 gal in a minute over 12 ac/h: 15 gal/ac, 25 % short; 9 ac/h are right: 1/128 ac in 3.125 s
        String short25 = hose(20, OptionalDouble.of(3 * GALLON), Optional.of(new HoseOrder.Timed(2 * ACRE_M2, 600)));
        assertThat(short25)
                .contains("Rate             15 gal/ac  = 3 gal/min x 60 min/h / 12 ac/h")
                .contains("Error            -25.0 %    = 15 gal/ac / 20 gal/ac - 1")
                .contains("Cover instead    9 ac/h     = 12 ac/h x 15 gal/ac / 20 gal/ac")
                .contains("  1/128 acre in  3.125 s");
    }

    @Test
    void metricSeasonsHaveAPlotOfTenMetresByTen() {
        // 200 L/ha at 0.5 ha/h are 100 L/h = 1.667 L/min; 0.01 ha takes 72 s and 2 L
        Season season = ExampleSeason.season();
        String card = String.join(
                "\n",
                HoseCard.lines(
                        season, new HoseOrder("H1", 0, 5_000 / 3_600.0, 60, OptionalDouble.empty(), Optional.empty())));

        assertThat(card)
                .contains("Hose          1.667 L/min", "A plot                100 m2", "sprayed in          72 s")
                .contains("catch in that time  2,000 mL");
    }

    @Test
    void flowRateAndAreaGoTogether() {
        double flow = HoseFlow.litresPerS(187, 3);

        assertThat(HoseFlow.rateLPerHa(flow, 3)).isCloseTo(187, within(1e-9));
        assertThat(HoseFlow.m2PerSFor(flow, 187)).isCloseTo(3, within(1e-9));
    }

    private static String boom(double gallonsPerAcre, double widthM, double spacingM, double speedMPerS) {
        Outlets outlets = new Outlets("sprayer S1", widthM, spacingM, "nozzle", true);
        return String.join(
                "\n",
                CalibrationCard.lines(
                        us(gallonsPerAcre),
                        new CalibrationOrder(
                                outlets,
                                0,
                                speedMPerS,
                                30,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                Optional.empty())));
    }

    private static String hose(double gallonsPerAcre, OptionalDouble caughtL, Optional<HoseOrder.Timed> area) {
        return String.join(
                "\n",
                HoseCard.lines(us(gallonsPerAcre), new HoseOrder("H1", 0, 2 * ACRE_M2 / 3_600, 60, caughtL, area)));
    }

    private static Season us(double gallonsPerAcre) {
        return ExampleSeason.season()
                .change()
                .units(DisplayUnits.US)
                .recipes(List.of(
                        new Recipe("standard", gallonsPerAcre * GALLON_PER_ACRE, 2, 18_000, OptionalInt.empty())))
                .season();
    }

    private static final class Cautions {
        static final String DRIFT = "Stop if mist drifts toward people, animals, water, hives or other crops.";
        static final String LABELS = "Spraying: labels, the law and local rules say in what wind you may spray";
    }
}
