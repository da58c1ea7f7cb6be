package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.quantity.DisplayUnits;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FiguresTest {
    private static final Figures US = new Figures(DisplayUnits.US);
    private static final Figures METRIC = new Figures(DisplayUnits.METRIC);
    private static final LocalDate TUESDAY = LocalDate.of(2027, 4, 20);

    @Test
    void areasHaveOneDecimalInAcresAndTwoInHectares() {
        // 1 ac = 4,046.8564224 m2 (NIST Handbook 44, appendix C): 10 ha = 24.7105 ac
        assertThat(US.area(10)).isEqualTo("24.7 ac");
        assertThat(METRIC.area(10)).isEqualTo("10.00 ha");
    }

    @Test
    void largeVolumesAndMassesAreWholeWithThousandsApart() {
        // 1 US gal = 3.785411784 L, 1 lb = 0.45359237 kg (NIST Handbook 44, appendix C)
        assertThat(US.volume(4542.4941408)).isEqualTo("1,200 gal");
        assertThat(US.mass(4541.3)).isEqualTo("10,012 lb");
    }

    @Test
    void smallVolumesAndMassesHaveADecimalWhereItSaysSomething() {
        assertThat(US.mass(30 * 0.45359237)).isEqualTo("30 lb");
        assertThat(US.mass(12.44 * 0.45359237)).isEqualTo("12.4 lb");
        assertThat(METRIC.volume(16.25)).isEqualTo("16.3 L");
    }

    @Test
    void whatIsThereIsNeverShownAsNothing() {
        assertThat(METRIC.mass(0.01)).isEqualTo("<0.1 kg");
        assertThat(METRIC.mass(0)).isEqualTo("0 kg");
        assertThat(US.area(0.01)).isEqualTo("<0.1 ac");
        assertThat(METRIC.area(0.001)).isEqualTo("<0.01 ha");
        assertThat(METRIC.area(0)).isEqualTo("0.00 ha");
    }

    @Test
    void whatSubtractingLeavesOfAnAreaIsNothing() {
        assertThat(US.area(0.3 - 0.2 - 0.1 + 1e-9)).isEqualTo("0.0 ac");
    }

    @Test
    void roadsHaveOneDecimal() {
        assertThat(US.distance(1.609344)).isEqualTo("1.0 mi");
    }

    @Test
    void onlyAFullTankIsCalledFull() {
        assertThat(Figures.percent(0.9999)).isEqualTo("99 %");
        assertThat(Figures.percent(1)).isEqualTo("100 %");
    }

    @Test
    void spansSayHoursOnlyWhenThereAreAny() {
        assertThat(Figures.span(Duration.ofMinutes(59))).isEqualTo("59 min");
        assertThat(Figures.span(Duration.ofMinutes(125))).isEqualTo("2 h 05 min");
    }

    @ParameterizedTest
    @CsvSource({"0, 0 min", "61, 1 min 1 s", "3600, 1 h", "6854, 1 h 54 min 14 s", "90000, 25 h"})
    void aTimeToTheSecondLeavesOutWhatIsNothing(long seconds, String shown) {
        assertThat(Figures.toTheSecond(seconds)).isEqualTo(shown);
    }

    @Test
    void aDeadlineIsNeverShownLaterThanItIs() {
        assertThat(METRIC.clock(TUESDAY.atTime(10, 30, 59), TUESDAY)).isEqualTo("10:30");
    }

    @Test
    void aTimeOnAnotherDayHasItsDate() {
        assertThat(METRIC.clock(TUESDAY.atTime(1, 5), TUESDAY.minusDays(1))).isEqualTo("01:05 on Tue 2027-04-20");
    }

    @Test
    void rainIsInInchesWhereFieldsAreInAcres() {
        assertThat(US.rain(20.32)).isEqualTo("0.8 in");
        assertThat(US.rain(6.35)).isEqualTo("0.25 in");
        assertThat(METRIC.rain(20.32)).isEqualTo("20.3 mm");
    }
}
