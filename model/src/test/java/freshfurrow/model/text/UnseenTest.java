package freshfurrow.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class UnseenTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0000",
                "\t",
                "\n",
                "\u001b",
                "\u007f",
                "\u0085",
                "\u009b",
                "\u00ad",
                "\u061c",
                "\u200b",
                "\u200f",
                "\u2028",
                "\u2029",
                "\u202e",
                "\u2066",
                "\ufeff",
                "\udb40\udc41"
            })
    void whatCouldSteerATerminalOrTurnTextAroundIsMarked(String character) {
        assertThat(Unseen.isIn("North " + character + "forty")).isTrue();
        assertThat(Unseen.marked("North " + character + "forty")).isEqualTo("North ?forty");
    }

    @Test
    void halfOfASurrogatePairIsMarkedAndAWholeOneIsShown() {
        String half = String.valueOf('\ud83c');
        assertThat(Unseen.marked("N" + half + "40")).isEqualTo("N?40");
        assertThat(Unseen.marked("\ud83c\udf31")).isEqualTo("\ud83c\udf31");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Zürich Ødegård 北の畑", "שדה צפון", "8 gal/ac – “north”"})
    void lettersOfAnyScriptAreShownAsTheyAre(String text) {
        assertThat(Unseen.isIn(text)).isFalse();
        assertThat(Unseen.marked(text)).isEqualTo(text);
    }
}
