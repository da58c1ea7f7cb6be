package freshfurrow.model.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples as printed, in the units they are printed in. */
class CalibrationTest {
    private static final double L_PER_GAL = 3.785411784;
    private static final double L_PER_FL_OZ = L_PER_GAL / 128;
    private static final double M_PER_IN = 0.0254;
    private static final double M_PER_FT = 0.3048;
    private static final double M_PER_S_PER_MPH = 1609.344 / 3600;
    private static final double HA_PER_AC = 0.40468564224;

    private static double gpa(OutletFlow flow) {
        return flow.rateLPerHa() / L_PER_GAL * HA_PER_AC;
    }

    private static OutletFlow of(double gpa, double mph, double inches) {
        return new OutletFlow(gpa * L_PER_GAL / HA_PER_AC, mph * M_PER_S_PER_MPH, inches * M_PER_IN);
    }

    /** GPM = GPA x MPH x W / 5,940 (county extension pages on calibration). */
    @ParameterizedTest
    @CsvSource({"20, 5, 30", "15, 6, 20", "7.5, 4.5, 36"})
    void flowIsThatOfThePublishedFormula(double gpa, double mph, double inches) {
        assertThat(of(gpa, mph, inches).litresPerS() * 60 / L_PER_GAL)
                .isCloseTo(gpa * mph * inches / 5940, within(1e-12));
    }

    /** Albany County Weed and Pest: 3.75 gal/min over 222 in at 5 mph, or 480 oz/min, are 20 gal/ac. */
    @Test
    void aMeasuredFlowGivesThePrintedRate() {
        OutletFlow flow = OutletFlow.ofFlow(3.75 * L_PER_GAL / 60, 5 * M_PER_S_PER_MPH, 222 * M_PER_IN);

        assertThat(gpa(flow)).isCloseTo(20, within(0.1));
        assertThat(flow.litresIn(60) / L_PER_FL_OZ).isCloseTo(480, within(1e-9));
        assertThat(46.4 * 480 / (5 * 222)).isCloseTo(gpa(flow), within(0.01));
    }

    /** Montana State University Extension, MT 2000-14: 1.5 gal/min at 30 gal/ac and 30 in take 9.9 mph. */
    @Test
    void aFlowAndARateGiveThePrintedSpeed() {
        OutletFlow at5Mph = OutletFlow.ofFlow(1.5 * L_PER_GAL / 60, 5 * M_PER_S_PER_MPH, 30 * M_PER_IN);

        assertThat(at5Mph.speedFor(30 * L_PER_GAL / HA_PER_AC) / M_PER_S_PER_MPH)
                .isCloseTo(9.9, within(0.05));
    }

    /** University of Florida: 26 fl oz caught in 300 ft from one outlet at 12 in are 29.5 gal/ac; 16 at 15 in are 14.5. */
    @ParameterizedTest
    @CsvSource({"26, 12, 29.5", "16, 15, 14.5"})
    void aCatchOverADistanceGivesThePrintedRate(double ounces, double inches, double gpa) {
        OutletFlow flow = OutletFlow.ofCatch(ounces * L_PER_FL_OZ, 300 * M_PER_FT, 2, inches * M_PER_IN);

        assertThat(gpa(flow)).isCloseTo(gpa, within(0.05));
        assertThat(flow.litresOver(300 * M_PER_FT) / L_PER_FL_OZ).isCloseTo(ounces, within(1e-9));
    }

    /** Ohio State University Extension, AEX-520: distances of 1/128 acre. Those at 22 and 32 in are cut off in print, not rounded. */
    @ParameterizedTest
    @CsvSource({
        "20, 204, 0.5",
        "22, 185, 1",
        "30, 136, 0.5",
        "32, 127, 1",
        "36, 113, 0.5",
        "38, 107, 0.5",
        "40, 102, 0.5"
    })
    void theSmallPlotIsAsLongAsPrinted(double inches, double feet, double tolerance) {
        assertThat(SmallPlot.distanceM(inches * M_PER_IN) / M_PER_FT).isCloseTo(feet, within(tolerance));
    }

    @Test
    void onTheSmallPlotFluidOuncesAreGallonsAnAcre() {
        OutletFlow flow = of(17.3, 4.6, 30);

        assertThat(flow.litresOver(SmallPlot.distanceM(30 * M_PER_IN)) / L_PER_FL_OZ)
                .isCloseTo(17.3, within(1e-9));
    }

    /** Handbook square-root law: 40 psi at 20 gal/ac are 22.5 psi at 15, and not the 30 psi of a linear rule. */
    @Test
    void pressureGoesWithTheSquareOfTheRate() {
        assertThat(PressureLaw.pressureFor(40, 20, 15)).isEqualTo(22.5);
        assertThat(PressureLaw.pressureFor(40, 20, 40)).isEqualTo(160);
        assertThatThrownBy(() -> PressureLaw.pressureFor(0, 20, 15)).hasMessage("pressure and rates are above 0");
    }

    @Test
    void fasterWithTheSameFlowAppliesLess() {
        assertThat(gpa(of(20, 5, 30).atSpeed(4 * M_PER_S_PER_MPH))).isCloseTo(25, within(1e-9));
    }

    @Test
    void theSpreadOfRowsIsThatOfASample() {
        // mean 20; squares 4 + 0 + 4 + 0 = 8; sqrt(8 / 3) = 1.632993; 8.16 %
        RowSpread spread = new RowSpread(List.of(18.0, 20.0, 22.0, 20.0));

        assertThat(spread.meanL()).isEqualTo(20);
        assertThat(spread.standardDeviationL()).isCloseTo(1.632993, within(1e-6));
        assertThat(spread.coefficientOfVariation()).isCloseTo(0.0816497, within(1e-6));
        assertThat(spread.deviation(0)).isCloseTo(-0.1, within(1e-12));
        assertThat(spread.deviation(2)).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void oneRowHasNoSpreadAndDryRowsHaveNoMean() {
        assertThat(new RowSpread(List.of(3.0)).coefficientOfVariation()).isZero();
        assertThatThrownBy(() -> new RowSpread(List.of(0.0, 0.0)))
                .hasMessage("catches are 0 or more, and one is above 0");
        assertThatThrownBy(() -> new RowSpread(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
