package freshfurrow.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Figures as growers type them. */
final class TypedQuantityTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            1,200              | VOLUME          | gal    | 1200 gal
            1,200 gallons      | VOLUME          | L      | 1200 gal
            12,345.5L          | VOLUME          | gal    | 12345.5 L
            600 gal            | VOLUME          | gal    | 600 gal
            600GAL             | VOLUME          | L      | 600 gal
            10 minutes         | TIME            | min    | 10 min
            10                 | TIME            | min    | 10 min
            1 h 30 min         | TIME            | min    | 90 min
            2 hrs 5            | TIME            | min    | 125 min
            1.5 hours          | TIME            | min    | 1.5 h
            5 miles per hour   | SPEED           | km/h   | 5 mph
            8 kph              | SPEED           | mph    | 8 km/h
            16 gallons per acre | VOLUME_PER_AREA | gal/ac | 16 gal/ac
            40 gpm             | FLOW            | L/min  | 40 gal/min
            1.8 lbs/acre       | MASS_PER_AREA   | kg/ha  | 1.8 lb/ac
            2 lb an acre       | MASS_PER_AREA   | lb/ac  | 2 lb/ac
            5 miles an hour    | SPEED           | mph    | 5 mph
            40 gallons a minute | FLOW           | gal/min | 40 gal/min
            42,5 ha            | AREA            | ha     | 42.5 ha
            42,5               | AREA            | ha     | 42.5 ha
            0,250              | LENGTH          | m      | 0.250 m
            12,5 litres per hectare | VOLUME_PER_AREA | L/ha | 12.5 L/ha
            2,2500             | MASS_PER_AREA   | kg/ha  | 2.2500 kg/ha
            1,5 h              | TIME            | min    | 1.5 h
            1,200,000 L        | VOLUME          | L      | 1200000 L
            1,200.5 L          | VOLUME          | L      | 1200.5 L
            3 tons             | MASS            | lb     | 6000 lb
            1 Ton              | MASS            | lb     | 2000 lb
            2.25 short tons    | MASS            | lb     | 4500 lb
            1,000tons          | MASS            | lb     | 2000000 lb
            3 t                | MASS            | lb     | 3 t
            3 tonnes           | MASS            | lb     | 3 t
            40'                | LENGTH          | ft     | 40 ft
            30"                | LENGTH          | ft     | 30 in
            .5                 | RAIN            | in     | .5 in
            300/ac             | PRICE_PER_AREA  | /ha    | 300 /ac
            """)
    void isWrittenAsASeasonFileHasIt(String typed, Kind kind, String usual, String written) {
        assertThat(TypedQuantity.asWritten(typed, kind, usual)).contains(written);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            1,5       | VOLUME | gal
            12,00     | VOLUME | gal
            1.200,5   | VOLUME | L
            1,200     | VOLUME | L
            34,000 L  | VOLUME | gal
            1,250     | VOLUME_PER_AREA | L/ha
            12,5 ac   | AREA   | ha
            about 5   | TIME   | min
            5 gal     | TIME   | min
            5 m       | TIME   | min
            ``        | TIME   | min
            five      | TIME   | min
            1e3       | VOLUME | gal
            5 t       | VOLUME | gal
            5 tons    | VOLUME | gal
            3 tons    | MASS   | kg
            1,5 tons  | MASS   | lb
            5 lb tons | MASS   | lb
            5         | VOLUME | ``
            """)
    void whatMayBeMeantOtherwiseIsNotGuessed(String typed, Kind kind, String usual) {
        assertThat(TypedQuantity.asWritten(typed, kind, usual)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void aQuantityThatIsWrittenRightlyStaysAsItIs(Kind kind) {
        List<String> written =
                kind.symbols().stream().map(symbol -> "12.5 " + symbol).toList();
        assertThat(written).allSatisfy(text -> assertThat(TypedQuantity.asWritten(text, kind, ""))
                .contains(text));
    }
}
