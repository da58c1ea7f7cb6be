package freshfurrow.cli.card;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.quantity.AreaUnit;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.quantity.DistanceUnit;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.MassUnit;
import freshfurrow.model.quantity.VolumeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CardUnitsTest {
    private static final CardUnits US = new CardUnits(DisplayUnits.US);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.505050505 | 0.5051",
                "20 | 20",
                "12.3456 | 12.35",
                "999.96 | 1000",
                "1234.5678 | 1,235",
                "0 | 0",
                "-2.5 | -2.5",
                "1e-9 | 0.000000001"
            })
    void aNumberHasFourDigitsThatCount(double figure, String shown) {
        assertThat(CardUnits.number(figure)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"2.63084e11, 2.63e11", "6e6, 6.00e6", "5, 5.00e0"})
    void aCountIsShownByItsSize(double count, String shown) {
        assertThat(CardUnits.count(count)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"-0.0721, -7.2 %", "0.0004, 0.0 %", "-0.0004, 0.0 %", "0.5, +50.0 %"})
    void aDeviationHasASign(double share, String shown) {
        assertThat(CardUnits.signedPercent(share)).isEqualTo(shown);
    }

    /** 1 gal/ac = 9.35396 L/ha (NIST SP 811, from memory). */
    @Test
    void figuresComeInTheSeasonsUnits() {
        assertThat(US.show(Kind.VOLUME_PER_AREA, 187.0792)).isEqualTo("20 gal/ac");
        assertThat(US.spacing(0.762)).isEqualTo("30 in");
        assertThat(new CardUnits(DisplayUnits.METRIC).show(Kind.SPEED, 2.5)).isEqualTo("9 km/h");
        assertThat(new CardUnits(DisplayUnits.METRIC).spacing(0.75)).isEqualTo("75 cm");
    }

    @Test
    void mixedUnitsGoTogetherAsTheSeasonHasThem() {
        DisplayUnits mixed =
                new DisplayUnits(AreaUnit.ACRE, VolumeUnit.LITRE, MassUnit.KILOGRAM, DistanceUnit.KILOMETRE);

        assertThat(new CardUnits(mixed).symbol(Kind.VOLUME_PER_AREA)).isEqualTo("L/ac");
        assertThat(new CardUnits(mixed).symbol(Kind.MASS_PER_AREA)).isEqualTo("kg/ac");
        assertThat(CardUnits.ofOneSystem(mixed).symbol(Kind.VOLUME_PER_AREA)).isEqualTo("L/ha");
    }
}
