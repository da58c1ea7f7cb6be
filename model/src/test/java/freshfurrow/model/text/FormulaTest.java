package freshfurrow.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class FormulaTest {
    @ParameterizedTest
    @ValueSource(strings = {"=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20"})
    void aSpreadsheetSeesAFormulaBehindBlanksOfAnyKind(String start) {
        for (String blanks : new String[] {
            "",
            " ",
            "  ",
            "\t",
            "\r\n",
            "\u000b",
            "\u0085",
            "\u00a0",
            "\u1680",
            "\u2003",
            "\u2007",
            "\u2028",
            "\u202f",
            "\u205f",
            "\u3000",
            "\u200b",
            "\ufeff",
            " \u00a0\t "
        }) {
            assertThat(Formula.begins(blanks + start + "1")).as(blanks + start).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "North forty", " North = forty", "a-b", "80 +", "'=1", "\u00e9@"})
    void otherTextIsNoFormula(String text) {
        assertThat(Formula.begins(text)).isFalse();
    }
}
