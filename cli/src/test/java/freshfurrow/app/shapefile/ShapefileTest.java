package freshfurrow.app.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.app.begin.FieldRow;
import freshfurrow.app.begin.UnusableMap;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** By 'ESRI Shapefile Technical Description' (ESRI white paper, July 1998), from memory, and hand-made bytes. */
final class ShapefileTest {
    private static final byte[] TWO = ShpBytes.polygons(
            List.of(List.of(ShpBytes.square(-97, 41, 0.01)), List.of(ShpBytes.square(-96.9, 41, 0.01))));

    private static Shapefile read(byte[] shp) throws UnusableMap {
        return Shapefile.read(shp, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Shapefile read(byte[] shp, byte[] dbf) throws UnusableMap {
        return Shapefile.read(shp, Optional.of(dbf), Optional.empty(), Optional.empty());
    }

    private static JsonNode shape(Shapefile read, int i) {
        return read.fields().shapes().orElseThrow().get(i);
    }

    /**
     * A triangle byte by byte: header of 100 bytes with file code 9994 = 0x270A, length (100 + 8 + 112) / 2 = 110 words = 0x6E, version
     * 1000 = 0x03E8 and type 5; then record 1 of 112 / 2 = 56 words = 0x38: type 5, box, 1 part, 4 points, part 0 at 0, and the points (0, 0),
     * (0, 2), (2, 0), (0, 0), where the double 2 is 0x4000000000000000.
     */
    @Test
    void aFileIsReadByteByByte() throws Exception {
        String zero = "0000000000000000";
        String two = "0000000000000040";
        String header = "0000270a" + "00000000".repeat(5) + "0000006e" + "e8030000" + "05000000" + zero.repeat(8);
        String record = "00000001" + "00000038" + "05000000" + zero + zero + two + two + "01000000" + "04000000"
                + "00000000" + zero + zero + zero + two + two + zero + zero + zero;
        byte[] file = HexFormat.of().parseHex(header + record);
        assertThat(file).hasSize(220);

        assertThat(shape(read(file), 0))
                .hasToString("{\"type\":\"Polygon\",\"coordinates\":[[[0.0,0.0],[2.0,0.0],[0.0,2.0],[0.0,0.0]]]}");
    }

    @Test
    void holesAreInTheirOuterRingsAndTurnTheOtherWay() throws Exception {
        Shapefile read = read(ShpBytes.polygons(List.of(
                List.of(ShpBytes.square(10, 50, 1), ShpBytes.square(12, 50, 1), ShpBytes.hole(12.2, 50.2, 0.1)))));

        JsonNode shape = shape(read, 0);
        assertThat(shape.path("type").asText()).isEqualTo("MultiPolygon");
        assertThat(shape.path("coordinates").get(0)).hasSize(1);
        assertThat(shape.path("coordinates").get(1)).hasSize(2);
        // RFC 7946, section 3.1.6: outer rings counterclockwise, from 12, 50 east
        assertThat(shape.path("coordinates").get(1).get(0).get(1)).hasToString("[13.0,50.0]");
    }

    @Test
    void aRingDrawnTheWrongWayAroundIsAFieldAllTheSame() throws Exception {
        Shapefile read = read(ShpBytes.polygons(List.of(List.of(ShpBytes.hole(10, 50, 1)))));

        assertThat(shape(read, 0).path("coordinates")).hasSize(1);
    }

    @Test
    void theTableTellsOfEachShapeAndNullShapesAreLeftOut() throws Exception {
        byte[] shapes = ShpBytes.polygons(
                List.of(List.of(ShpBytes.square(-97, 41, 0.01)), List.of(), List.of(ShpBytes.square(-96, 41, 0.01))));
        byte[] table = ShpBytes.table(
                List.of("FIELD_NAME", "CROP", "ACRES"),
                List.of(List.of("North forty", "corn", "40"), List.of("ghost", "", ""), List.of("Süd", "soy", "80")));
        Shapefile read = read(shapes, table);

        assertThat(read.fields().rows())
                .containsExactly(
                        new FieldRow("", "North forty", "", "", "", "corn", ""),
                        new FieldRow("", "Süd", "", "", "", "soy", ""));
        assertThat(read.said())
                .containsExactly(
                        "There is no .prj file with it: its coordinates look like degrees of longitude and latitude, and are taken as such.",
                        "Of its table, FIELD_NAME is name, CROP is crop; left out: ACRES. Areas and places come from the drawing.");
    }

    @Test
    void aTableOfWindows1252IsRead() throws Exception {
        byte[] table = ShpBytes.table(
                List.of("NAME"), List.of(List.of("Süd"), List.of("Ost")), Charset.forName("windows-1252"));

        assertThat(read(TWO, table).fields().rows().get(0).name()).isEqualTo("Süd");
        assertThat(Shapefile.read(TWO, Optional.of(table), Optional.of("1252"), Optional.empty())
                        .fields()
                        .rows()
                        .get(0)
                        .name())
                .isEqualTo("Süd");
    }

    @Test
    void rowsThatWereDeletedAreLeftOut() throws Exception {
        byte[] table = ShpBytes.table(List.of("NAME"), List.of(List.of("gone"), List.of("there")));
        table[32 + 32 + 1] = '*';

        assertThat(read(TWO, table).fields().rows()).extracting(FieldRow::name).containsExactly("there");
    }

    @Test
    void aTableOfAnotherFileIsRefused() {
        byte[] table = ShpBytes.table(List.of("NAME"), List.of(List.of("one")));

        assertThatThrownBy(() -> read(TWO, table))
                .isInstanceOf(UnusableMap.class)
                .hasMessage(
                        "The table of the shapefile (.dbf) has 1 rows for 2 shapes: they are not of one shapefile. Save it again.");
    }

    @Test
    void metresWithoutAProjectionAreRefused() {
        byte[] metres = ShpBytes.polygons(List.of(List.of(ShpBytes.square(650_000, 4_540_000, 400))));

        assertThatThrownBy(() -> read(metres))
                .hasMessageContaining("are not degrees, and no .prj file says what they are");
    }

    @Test
    void pointsAndLinesAreNoFields() {
        byte[] points = TWO.clone();
        ByteBuffer.wrap(points).order(ByteOrder.LITTLE_ENDIAN).putInt(32, 1);

        assertThatThrownBy(() -> read(points)).hasMessageContaining("shapes of type 1, such as points or lines");
        assertThatThrownBy(() -> read(ShpBytes.polygons(List.of(List.of()))))
                .hasMessage("The shapefile has no polygon in it.");
    }

    /** Counts of 2^31 - 1 shapes, parts, points or rows must not be believed. */
    @ParameterizedTest
    @ValueSource(ints = {104, 144, 148, 152})
    void hugeCountsAreNotBelieved(int at) {
        for (int count : new int[] {Integer.MAX_VALUE, Integer.MIN_VALUE, -1, 1 << 28}) {
            byte[] shp = TWO.clone();
            ByteBuffer.wrap(shp)
                    .order(at == 104 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN)
                    .putInt(at, count);

            assertThatThrownBy(() -> read(shp)).isInstanceOf(UnusableMap.class);
        }
    }

    @Test
    void aTableThatSaysItHasMoreRowsThanItHasIsRefused() {
        for (int count : new int[] {3, Integer.MAX_VALUE, -1}) {
            byte[] table = ShpBytes.table(List.of("NAME"), List.of(List.of("a"), List.of("b")));
            ByteBuffer.wrap(table).order(ByteOrder.LITTLE_ENDIAN).putInt(4, count);

            assertThatThrownBy(() -> read(TWO, table))
                    .isInstanceOf(UnusableMap.class)
                    .hasMessageContaining("(.dbf)");
        }
    }

    @Property(tries = 300)
    void whereverAFileEndsItIsReadOrRefused(@ForAll @IntRange(max = 371) int length) {
        byte[] table = ShpBytes.table(List.of("NAME"), List.of(List.of("a"), List.of("b")));
        try {
            read(Arrays.copyOf(TWO, Math.min(length, TWO.length)));
            read(TWO, Arrays.copyOf(table, Math.min(length, table.length)));
        } catch (UnusableMap e) {
            assertThat(e.reason()).isNotBlank();
        }
    }

    @Property(tries = 1000)
    void whateverByteIsAnotherItIsReadOrRefused(@ForAll @IntRange(max = 371) int at, @ForAll byte other) {
        byte[] shp = TWO.clone();
        byte[] table = ShpBytes.table(List.of("NAME"), List.of(List.of("a"), List.of("b")));
        shp[Math.min(at, shp.length - 1)] = other;
        table[Math.min(at, table.length - 1)] = other;
        try {
            read(shp);
        } catch (UnusableMap e) {
            assertThat(e.reason()).isNotBlank();
        }
        try {
            read(TWO, table);
        } catch (UnusableMap e) {
            assertThat(e.reason()).isNotBlank();
        }
    }

    static void assertDegrees(JsonNode point, double lon, double lat, double tolerance) {
        assertThat(point.get(0).asDouble()).isCloseTo(lon, within(tolerance));
        assertThat(point.get(1).asDouble()).isCloseTo(lat, within(tolerance));
    }
}
