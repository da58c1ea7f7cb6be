package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What YAML 1.1 would turn into truth values, dates and numbers to the base of 60 or 8 is read as it is written. */
final class YamlTrapsTest {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"14:00", "\"14:00\"", "'14:00'", "14:00:00"})
    void aTimeOfDayIsNoNumberToTheBaseOf60(String time) {
        Season season = WrittenSeason.in(folder)
                .with("from: \"14:00\"", "from: " + time)
                .season();
        assertThat(season.rain().get(0).fromS()).isEqualTo(14 * 3600);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[07:00/12:00, 12:30/20:00]",
                "['07:00/12:00', \"12:30/20:00\"]",
                "\n  - 07:00/12:00\n  - 12:30/20:00"
            })
    void hoursNeedNoQuotes(String hours) {
        Season season = WrittenSeason.in(folder)
                .with("[\"07:00/12:00\", \"12:30/20:00\"]", hours)
                .season();
        assertThat(season).isEqualTo(WrittenSeason.in(folder).season());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NO",
                "no",
                "on",
                "yes",
                "Y",
                "N",
                "true",
                "False",
                "0123",
                "0o17",
                "0x1F",
                "1e3",
                "12",
                "2027-04-19"
            })
    void anIdIsWhatIsWritten(String id) {
        for (String written : new String[] {id, '"' + id + '"', "'" + id + "'"}) {
            Season season = WrittenSeason.in(folder)
                    .with("N40: {name", written + ": {name")
                    .season();
            assertThat(season.fields()).extracting(Field::id).containsExactly(id, "S80");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"NO", "on", "0123", "1_000", "1:30:00", "2027-04-19", ".inf", "0x1F", "+12", "1e3", "True"})
    void aNameIsWhatIsWritten(String name) {
        for (String written : new String[] {name, '"' + name + '"', "'" + name + "'"}) {
            Season season =
                    WrittenSeason.in(folder).with("North forty", written).season();
            assertThat(season.fields().get(0).name()).isEqualTo(name);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0600 gal, 600",
        "6e2 gal, 600",
        "600. gal, 600",
        "+600 gal, 600",
        "600gal, 600",
        "600   gal, 600",
        "0800 gal, 800"
    })
    void aFigureIsDecimal(String tank, double gallons) {
        Season season =
                WrittenSeason.in(folder).with("tank: 600 gal", "tank: " + tank).season();
        assertThat(season.applicators().get(0).tankL()).isCloseTo(gallons * 3.785411784, within(1e-9));
    }

    @Test
    void aLeadingZeroMakesNoOctalNumber() {
        Season season = WrittenSeason.in(folder).with("hoses: 1", "hoses: 010").season();
        assertThat(season.waterPoints().get(0).hoses()).isEqualTo(10);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"2027-04-01\"", "'2027-04-01'", "2027-04-01"})
    void aDateNeedsNoQuotes(String date) {
        Season season = WrittenSeason.in(folder)
                .with("from: 2027-04-01", "from: " + date)
                .season();
        assertThat(season).isEqualTo(WrittenSeason.in(folder).season());
    }

    @Test
    void aByteOrderMarkAndCarriageReturnsAreAccepted() {
        assertThat(new WrittenSeason(folder, "\uFEFF" + WrittenSeason.RIGHT.replace("\n", "\r\n")).season())
                .isEqualTo(WrittenSeason.in(folder).season());
    }
}
