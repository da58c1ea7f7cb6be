package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import freshfurrow.model.read.tree.TreeReader;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields drawn in GeoJSON; the geometries are the examples of RFC 7946, The GeoJSON Format (IETF 2016), appendix A. */
final class RightMapsTest {
    private static final String NO_HOLE = "[[[100.0, 0.0], [101.0, 0.0], [101.0, 1.0], [100.0, 1.0], [100.0, 0.0]]]";
    private static final String HOLE = "[[[100.0, 0.0], [101.0, 0.0], [101.0, 1.0], [100.0, 1.0], [100.0, 0.0]],"
            + " [[100.8, 0.8], [100.8, 0.2], [100.2, 0.2], [100.2, 0.8], [100.8, 0.8]]]";
    private static final String MULTI = "[[[[102.0, 2.0], [103.0, 2.0], [103.0, 3.0], [102.0, 3.0], [102.0, 2.0]]],"
            + " [[[100.0, 0.0], [101.0, 0.0], [101.0, 1.0], [100.0, 1.0], [100.0, 0.0]],"
            + " [[100.2, 0.2], [100.2, 0.8], [100.8, 0.8], [100.8, 0.2], [100.2, 0.2]]]]";

    @TempDir
    private Path folder = Path.of("");

    /** Appendix A.3 (without and with a hole) and A.6: the areas are those of one-degree squares, so the rings are what counts. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"Polygon;" + NO_HOLE + ";1", "Polygon;" + HOLE + ";2", "MultiPolygon;" + MULTI + ";3"})
    void theStandardsGeometriesAreRead(String type, String coordinates, int rings) throws FileProblem {
        Problems problems = new Problems(List.of());
        String geometry = "{\"type\": \"" + type + "\", \"coordinates\": " + coordinates + "}";
        Optional<List<List<List<GeoPoint>>>> polygons =
                GeoJsonFields.geometry(TreeReader.json(TextFile.of("map.geojson", geometry)), problems);
        assertThat(problems.sorted()).isEmpty();
        assertThat(polygons).isPresent();
        assertThat(polygons.get().stream().mapToInt(List::size).sum()).isEqualTo(rings);
        assertThat(polygons.get().get(0).get(0).get(1))
                .as("longitude stands first")
                .isIn(new GeoPoint(0, 101), new GeoPoint(2, 103));
    }

    @Test
    void areaAndPlaceComeFromTheDrawing() {
        Field field = field("{\"id\": \"N40\", \"crop\": \"corn\"}", square(""));
        assertThat(field.areaHa()).isCloseTo(93.5, within(0.5));
        assertThat(field.outline()).hasSize(1);
        assertThat(field.outline().get(0)).hasSize(5);
        assertThat(field.at().orElseThrow().lat()).isBetween(41.02, 41.03);
        assertThat(field.at().orElseThrow().lon()).isBetween(-97.01, -97.0);
    }

    @Test
    void aHoleIsLessArea() {
        String hole =
                ", [[-97.008, 41.022], [-97.008, 41.028], [-97.002, 41.028], [-97.002, 41.022], [-97.008, 41.022]]";
        Field whole = field("{\"id\": \"N40\", \"crop\": \"corn\"}", square(""));
        Field holed = field("{\"id\": \"N40\", \"crop\": \"corn\"}", square(hole));
        assertThat(holed.areaHa()).isCloseTo(whole.areaHa() * (1 - 0.36), within(0.01));
        assertThat(holed.outline()).hasSize(2);
    }

    @Test
    void propertiesGoBeforeTheDrawing() {
        Field field = field(
                "{\"id\": \"N40\", \"name\": \"North\", \"crop\": \"corn\", \"area\": \"90 ha\", \"entrance\": [-97.0, 41.02],"
                        + " \"lat\": 1, \"lon\": 2, \"window\": \"2027-05-01/2027-05-20\", \"planters\": [\"P1\"],"
                        + " \"drainage\": \"well\", \"lateWeight\": 2, \"recipe\": \"standard\"}",
                square(""));
        assertThat(field.areaHa()).isEqualTo(90);
        assertThat(field.at()).contains(new GeoPoint(41.02, -97));
        assertThat(field.name()).isEqualTo("North");
        assertThat(field.lateWeight()).isEqualTo(2);
    }

    @Test
    void severalPolygonsAreOneField() {
        Field one = field("{\"id\": \"N40\", \"crop\": \"corn\"}", square(""));
        Field two = field(
                "{\"id\": \"N40\", \"crop\": \"corn\"}",
                "{\"type\": \"MultiPolygon\", \"coordinates\": ["
                        + "[[[-97.01, 41.02], [-97.0, 41.02], [-97.0, 41.03], [-97.01, 41.03], [-97.01, 41.02]]],"
                        + "[[[-97.03, 41.02], [-97.02, 41.02], [-97.02, 41.03], [-97.03, 41.03], [-97.03, 41.02]]]]}");
        assertThat(two.areaHa()).isCloseTo(2 * one.areaHa(), within(0.001));
    }

    @Test
    void anIdMayStandBesideTheProperties() {
        String map = "{\"type\": \"FeatureCollection\", \"features\": [{\"type\": \"Feature\", \"id\": 40,"
                + " \"properties\": {\"crop\": \"corn\"}, \"geometry\": " + square("") + "}]}";
        assertThat(WrittenSeason.in(folder)
                        .withFields("map.json", map)
                        .season()
                        .fields()
                        .get(0)
                        .id())
                .isEqualTo("40");
    }

    private Field field(String properties, String geometry) {
        String map = "{\"type\": \"FeatureCollection\", \"features\": [{\"type\": \"Feature\", \"properties\": "
                + properties + ", \"geometry\": " + geometry + "}]}";
        return WrittenSeason.in(folder)
                .withFields("map.geojson", map)
                .season()
                .fields()
                .get(0);
    }

    private static String square(String hole) {
        return "{\"type\": \"Polygon\", \"coordinates\": [[[-97.01, 41.02], [-97.0, 41.02], [-97.0, 41.03], [-97.01, 41.03],"
                + " [-97.01, 41.02]]" + hole + "]}";
    }
}
