package freshfurrow.app.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Field;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Fields out of KML files: OGC KML 2.3 (12-007r2), elements Placemark, Polygon, LinearRing, MultiGeometry, coordinates, ExtendedData. */
final class KmlFieldsTest {
    private static final String SQUARE = square(-97.0, 41.0, 0.01);

    /** A ring of a square, from its south-western corner, degrees. */
    private static String square(double west, double south, double side) {
        double east = west + side;
        double north = south + side;
        return String.format(
                java.util.Locale.ROOT,
                "%1$.4f,%2$.4f,310 %3$.4f,%2$.4f,311.5%n %3$.4f,%4$.4f %1$.4f,%4$.4f,0 %1$.4f,%2$.4f,310",
                west,
                south,
                east,
                north);
    }

    private static String polygon(String outer, String... inner) {
        StringBuilder polygon =
                new StringBuilder("<Polygon><extrude>0</extrude><outerBoundaryIs><LinearRing><coordinates>" + outer
                        + "</coordinates></LinearRing></outerBoundaryIs>");
        for (String ring : inner) {
            polygon.append("<innerBoundaryIs><LinearRing><coordinates>" + ring
                    + "</coordinates></LinearRing></innerBoundaryIs>");
        }
        return polygon.append("</Polygon>").toString();
    }

    private static String kml(String inside) {
        return "\uFEFF<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<kml xmlns=\"http://www.opengis.net/kml/2.2\"><Document><name>Farm</name>"
                + inside + "</Document></kml>";
    }

    private static List<Field> fields(String map) throws UnusableMap {
        Answers answers = new Answers(
                UnitSystem.US,
                Map.of(Section.PLACES, List.of(new Entry("", Map.of("at", "41,-97")))),
                DrawnFields.read(map),
                false);
        NewSeason begun = NewSeason.of(answers, NewSeasonTest.HERE);
        assertThat(begun.problems()).isEmpty();
        assertThat(begun.fieldsName()).isEqualTo("fields.geojson");
        return ((Reading.Valid) begun.reading()).season().fields();
    }

    @Test
    void aPlacemarkWithAPolygonIsAFieldOfItsName() throws UnusableMap {
        String map = kml(
                "<Folder><Placemark id=\"x\"><name> North &amp; <![CDATA[<b>forty]]></name><Style><name>no</name></Style>"
                        + "<ExtendedData><Data name=\"Crop\"><value>corn</value></Data><SchemaData><SimpleData name=\"owner\">B</SimpleData>"
                        + "</SchemaData></ExtendedData>" + polygon(SQUARE) + "</Placemark></Folder>");
        assertThat(DrawnFields.isMap(map)).isTrue();
        assertThat(DrawnFields.read(map).rows())
                .containsExactly(new FieldRow("", "North & <b>forty", "", "", "", "corn", ""));
        // a hundredth of a degree each way at 41 degrees north: 1.1105 km by 0.8412 km (WGS84), about 93.4 ha
        assertThat(fields(map).get(0).areaHa()).isBetween(93.0, 94.0);
    }

    @Test
    void anInnerRingIsNoPartOfTheField() throws UnusableMap {
        String hole = square(-96.998, 41.002, 0.005);
        String map = kml(
                "<Placemark><name>Ring</name><ExtendedData><Data name=\"crop\"><value>corn</value></Data></ExtendedData>"
                        + polygon(SQUARE, hole) + "</Placemark>");
        // a quarter of the square is left out
        assertThat(fields(map).get(0).areaHa()).isBetween(0.75 * 93.0, 0.75 * 94.0);
    }

    @Test
    void allPolygonsOfAMultiGeometryAreOneField() throws UnusableMap {
        String map = kml("<Placemark><name>Two parts</name><MultiGeometry>" + polygon(SQUARE)
                + "<Point><coordinates>-97,41</coordinates></Point><MultiGeometry>"
                + polygon(square(-96.98, 41.0, 0.01)) + "</MultiGeometry></MultiGeometry></Placemark>");
        assertThat(fields(map)).singleElement().satisfies(field -> assertThat(field.areaHa())
                .isBetween(2 * 93.0, 2 * 94.0));
    }

    @Test
    void pointsAndLinesAreNoFields() throws UnusableMap {
        String map = kml("<Placemark><name>Yard</name><Point><coordinates>-97,41</coordinates></Point></Placemark>"
                + "<Placemark><name>Road</name><LineString><coordinates>-97,41 -97,42</coordinates></LineString></Placemark>"
                + "<Placemark><name>Flat</name>" + polygon(SQUARE) + "</Placemark>");
        assertThat(DrawnFields.read(map).rows()).extracting(FieldRow::name).containsExactly("Flat");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<kml><Placemark><name>A</name>|cannot be read from line 1 on",
                "<kml></kml>|no placemark with a polygon in it",
                "<gpx><trk/></gpx>|begins with gpx",
                "<kml>&nbsp;</kml>|cannot be read from line 1 on",
            })
    void whatIsNoKmlWithFieldsIsNotTaken(String text, String reason) {
        assertRefused(text, reason);
    }

    @ParameterizedTest
    @ValueSource(strings = {"41", "-97,north", "-97,41,5,7", "NaN,41", "", "0x1p3,41", "-97, 41"})
    void aPositionThatIsNoneIsNamed(String position) {
        assertRefused(
                kml("<Placemark><name>Flat</name>" + polygon(position) + "</Placemark>"),
                "in the polygon of Flat is no longitude,latitude in degrees.");
    }

    @Test
    void nothingIsReadButTheTextItself(@TempDir Path folder) throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "secret");
        assertRefused(
                "<!DOCTYPE kml [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]><kml><Placemark><name>&x;</name>"
                        + polygon(SQUARE) + "</Placemark></kml>",
                "document type declaration");
        assertRefused(
                "<!DOCTYPE kml SYSTEM \"" + secret.toUri() + "\"><kml>" + polygon(SQUARE) + "</kml>",
                "document type declaration");
    }

    @Test
    void entitiesThatGrowAreRefused() {
        StringBuilder type = new StringBuilder("<!DOCTYPE kml [<!ENTITY a0 \"aaaaaaaaaa\">");
        for (int i = 1; i < 12; i++) {
            type.append("<!ENTITY a" + i + " \"" + ("&a" + (i - 1) + ";").repeat(10) + "\">");
        }
        assertRefused(type + "]><kml><Placemark><name>&a11;</name></Placemark></kml>", "document type declaration");
    }

    @Test
    void howDeepAFileIsDoesNotMatter() {
        assertRefused("<kml>" + "<Folder>".repeat(200_000), "cannot be read from line 1 on");
        assertRefused("<kml>" + "<Placemark>".repeat(200_000), "cannot be read from line 1 on");
    }

    @Test
    void aZipIsToBeUnzippedFirst() {
        assertThat(DrawnFields.isMap("PK\u0003\u0004")).isTrue();
        assertRefused("PK\u0003\u0004\u0014", "Unzip it, and take the KML file that is in it.");
    }

    private static void assertRefused(String map, String reason) {
        assertThatThrownBy(() -> DrawnFields.read(map))
                .isInstanceOf(UnusableMap.class)
                .hasMessageContaining(reason);
    }
}
