package freshfurrow.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Letters without marks. */
final class PlainLettersTest {
    @ParameterizedTest
    @CsvSource({
        "Hosszú-dűlő, Hosszu-dulo",
        "szója, szoja",
        "Über dem Hang, Uber dem Hang",
        "Große Wiese, Grosse Wiese",
        "Łąka na wzgórzu, Laka na wzgorzu",
        "Rødkløver Æng, Rodklover Aeng",
        "Đurđevo čelo, Durdevo celo",
        "Ağıl, Agil",
        "Finca 3º, Finca 3o",
        "N40 (east), N40 (east)"
    })
    void lettersLoseTheirMarks(String name, String plain) {
        assertThat(PlainLetters.of(name)).contains(plain);
    }

    @Test
    void aMarkThatStandsOnItsOwnBehindALetterIsTheSame() {
        assertThat(PlainLetters.of("du\u030blo\u030b")).contains("dulo");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Поле 7", "соя", "ἀγρός", "北", "Field שדה"})
    void lettersOfOtherScriptsAreNotGuessed(String name) {
        assertThat(PlainLetters.of(name)).isEmpty();
    }
}
