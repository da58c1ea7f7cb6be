package freshfurrow.app.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.read.Reading;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables of fields as they come from other programs. */
final class PastedTableTest {
    private static final FieldRow NORTH = new FieldRow("N40", "North forty", "40 ac", "41.02", "-97.01", "corn", "");

    private static List<FieldRow> fields(String text) {
        PastedTable table = PastedTable.read(text).orElseThrow();
        return table.fields(table.guesses());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Field ID\tField name\tAcres\tLatitude\tLongitude\tCrop\nN40\tNorth forty\t40\t41.02\t-97.01\tcorn\n",
                "\uFEFFid,name,area (ac),lat,lon,crop\r\nN40,North forty,40,41.02,-97.01,corn\r\n\r\n",
                "No.;Name;Size [acres];Lat;Lng;CROP\rN40;\"North forty\";40;41.02;-97.01;corn",
                "\r\n\r\nCrop,Owner,Lon,Lat,Area ac,Id,Name\r\ncorn,\"B, and sons\",-97.01,41.02,40,N40,North forty\r\n,,,,,,\r\n"
            })
    void headingsAreGuessedByName(String text) {
        assertThat(fields(text)).containsExactly(NORTH);
    }

    @Test
    void aTableWithoutHeadingsIsAskedAbout() {
        PastedTable table = PastedTable.read("N40\tNorth forty\t40").orElseThrow();
        assertThat(table.guesses()).containsOnly(Optional.empty());
        assertThat(table.rows()).hasSize(1);
        assertThat(table.fields(List.of(Optional.of(Heading.ID), Optional.of(Heading.NAME), Optional.of(Heading.AREA))))
                .containsExactly(new FieldRow("N40", "North forty", "40", "", "", "", ""));
    }

    @Test
    void noTwoColumnsAreAboutTheSame() {
        assertThat(PastedTable.read("Field,Name\na,b\n").orElseThrow().guesses())
                .containsExactly(Optional.of(Heading.NAME), Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \r\n\t\n", "\uFEFF", "a,\"b"})
    void whatIsNotATableIsNotTaken(String text) {
        assertThat(PastedTable.read(text)).isEmpty();
    }

    @Test
    void fieldsThatWereDrawnKeepTheirShapes() throws UnusableMap {
        String map =
                "\uFEFF{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"id\":7,\"properties\":"
                        + "{\"Field_Name\":\"<b>North\",\"CROP\":\"corn\",\"owner\":\"B\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":"
                        + "[[[-97.0,41.0],[-96.99,41.0],[-96.99,41.01],[-97.0,41.01],[-97.0,41.0]]]}}]}";
        assertThat(DrawnFields.isMap(map)).isTrue();
        GivenFields drawn = DrawnFields.read(map);
        assertThat(drawn.rows()).containsExactly(new FieldRow("7", "<b>North", "", "", "", "corn", ""));
        Answers answers = new Answers(
                UnitSystem.US, Map.of(Section.PLACES, List.of(new Entry("", Map.of("at", "41,-97")))), drawn, false);
        NewSeason begun = NewSeason.of(answers, NewSeasonTest.HERE);
        assertThat(begun.problems()).isEmpty();
        assertThat(begun.missing()).isEmpty();
        assertThat(begun.fieldsName()).isEqualTo("fields.geojson");
        // a hundredth of a degree each way at 41 degrees north: 1.1105 km by 0.8412 km (WGS84), about 93.4 ha
        assertThat(((Reading.Valid) begun.reading()).season().fields().get(0).areaHa())
                .isBetween(93.0, 94.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "{}", "{\"features\": []}", "{\"features\": 7}"})
    void whatIsNotAMapIsNotTaken(String text) {
        assertThat(DrawnFields.isMap(text)).isTrue();
        assertThatThrownBy(() -> DrawnFields.read(text))
                .isInstanceOf(UnusableMap.class)
                .hasMessage("That is not a GeoJSON FeatureCollection with fields in it.");
    }
}
