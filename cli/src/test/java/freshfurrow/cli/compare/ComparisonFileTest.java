package freshfurrow.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.compare.ComparedSprings;
import freshfurrow.model.quantity.ClockFace;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Work;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparisonFileTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        ComparedSprings compared = ComparedExample.springs(1, 40);

        assertThat(read(ComparisonFile.toJson(compared))).isEqualTo(compared);
    }

    @Test
    void aClockThatIsNotUsualIsRememberedForDates() throws IOException {
        ComparedSprings compared =
                ComparedExample.springsIn(DisplayUnits.US.withClock(ClockFace.TWENTY_FOUR_HOURS), 1, 3);

        assertThat(read(ComparisonFile.toJson(compared))).isEqualTo(compared);
        assertThat(ComparisonFile.toJson(ComparedExample.springs(1, 3))).doesNotContain("\"clock\"");
    }

    @Test
    void slicesWrittenReadAndJoinedGiveTheSameText() throws IOException {
        ComparedSprings one = read(ComparisonFile.toJson(ComparedExample.springs(1, 13)));
        ComparedSprings two = read(ComparisonFile.toJson(ComparedExample.springs(14, 40)));

        assertThat(ComparisonFile.toJson(two.join(one)))
                .isEqualTo(ComparisonFile.toJson(ComparedExample.springs(1, 40)));
    }

    @Test
    void whatIsPlantedWithExtractIsWrittenReadAndJoinedWhereSomeIsNot() throws IOException {
        ComparedSprings whole = ComparedExample.springs(1, 40, true);
        ComparedSprings one = read(ComparisonFile.toJson(ComparedExample.springs(1, 13, true)));
        ComparedSprings two = read(ComparisonFile.toJson(ComparedExample.springs(14, 40, true)));

        assertThat(one.join(two)).isEqualTo(whole);
        assertThat(ComparisonFile.toJson(whole)).contains("\"untreated\": true", "\"treatedShare\"", "\"untreatedHa\"");
        assertThat(ComparisonFile.toJson(ComparedExample.springs(1, 40))).doesNotContain("reated");
    }

    @Test
    void sprayersAreRememberedForTheWords() throws IOException {
        ComparedSprings both = ComparedExample.springs(1, 3, true, Set.of(Work.PLANT, Work.SPRAY));

        assertThat(read(ComparisonFile.toJson(both))).isEqualTo(both);
        assertThat(ComparisonFile.toJson(ComparedExample.springs(1, 3))).doesNotContain("works");
    }

    @Test
    void slicesOfWhichOneMayPlantWithoutExtractAreNotJoined() {
        assertThatThrownBy(() -> ComparedExample.springs(1, 13, true).join(ComparedExample.springs(14, 40)))
                .hasMessage("they have different rules");
    }

    @Test
    void eachSpringHasALineOfItsOwn() {
        assertThat(ComparisonFile.toJson(ComparedExample.springs(1, 3)).lines())
                .filteredOn(line -> line.strip().startsWith("[2,"))
                .hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
                    freshfurrow-compare/1, freshfurrow-plan/1, is of the format freshfurrow-plan/1
                    `"recorded": `, `"recoded": `, has no 'recorded'
                    `[2,`, `[3,`, spring 3 after 3
                    `"seed": 1`, `"seed": 1]`, is not JSON
                    `"area": "ac"`, `"area": "rood"`, has an unknown 'rood'
                    """)
    void whatIsWrongIsSaidInALine(String before, String after, String reason) {
        String broken = ComparisonFile.toJson(ComparedExample.springs(1, 3)).replace(before, after);

        assertThatThrownBy(() -> read(broken)).isInstanceOf(IOException.class).hasMessageContaining(reason);
    }

    private ComparedSprings read(String text) throws IOException {
        Path file = folder.resolve("compare.json");
        Files.writeString(file, text);
        return ComparisonReader.read(file);
    }
}
