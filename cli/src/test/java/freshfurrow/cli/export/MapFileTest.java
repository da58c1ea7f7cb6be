package freshfurrow.cli.export;

import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.cli.example.HostileNames;
import freshfurrow.cli.example.MixedExample;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.geojson.GeoJsonReader;

/** Maps against RFC 7946, and as a general-purpose library of geometry reads them. */
final class MapFileTest {
    private static final JsonMapper JSON = new JsonMapper();

    static List<String> hostileNames() {
        return HostileNames.ALL;
    }

    @Test
    void aFieldTellsWhenItIsPlantedWithinWhichWindowAndByWhom() throws Exception {
        List<JsonNode> features = features(MapFile.text(ExampleSeason.season(), ExamplePlan.plan()));
        JsonNode late = features.get(1).get("properties");
        assertThat(late.get("kind").asText()).isEqualTo("field");
        assertThat(late.get("planted").asText()).isEqualTo("2027-04-21");
        assertThat(late.get("finished").asText()).isEqualTo("2027-04-21T08:20:00");
        assertThat(late.get("windowLast").asText()).isEqualTo("2027-04-20");
        assertThat(late.get("lateDays").asInt()).isEqualTo(1);
        assertThat(late.get("planters").toString()).isEqualTo("[\"P1\"]");
        assertThat(late.get("loads").toString()).isEqualTo("[\"L0002\"]");
        JsonNode left = features.get(2).get("properties");
        assertThat(left.has("planted")).isFalse();
        assertThat(left.get("notPlanted").asDouble()).isEqualTo(2);
    }

    @Test
    void aFieldTellsWhatIsDoneAndHowMuchOfItWithoutExtract() throws Exception {
        List<JsonNode> features = features(MapFile.text(MixedExample.season(), MixedExample.plan()));
        assertThat(features.stream().limit(3).map(feature -> feature.get("properties")))
                .extracting(
                        each -> each.get("done").asText(),
                        each -> each.get("withExtract").asDouble(),
                        each -> each.get("withoutExtract").asDouble(),
                        each -> each.path("work").asText())
                .containsExactly(
                        tuple("planted in part without extract", 5.0, 3.0, ""),
                        tuple("sprayed", 4.0, 0.0, "spray"),
                        tuple("planted without extract", 0.0, 2.0, ""));
    }

    @Test
    void whereAllIsPlantedWithExtractTheMapDoesNotSaySo() {
        assertThat(MapFile.text(ExampleSeason.season(), ExamplePlan.plan()))
                .doesNotContain("xtract\"", "\"done\"", "\"work\"");
    }

    @Test
    void whatHasNoPlaceHasNoGeometry() throws Exception {
        // RFC 7946, section 3.2: an unlocated feature has the geometry null
        assertThat(features(MapFile.text(ExampleSeason.season(), ExamplePlan.plan()))
                        .get(0)
                        .get("geometry")
                        .isNull())
                .isTrue();
    }

    @Test
    void longitudeComesFirst() throws Exception {
        // RFC 7946, section 3.1.1; the yard is at 41 north, 97 west
        List<JsonNode> features = features(MapFile.text(ExampleSeason.season(), ExamplePlan.plan()));
        assertThat(features.get(4).get("geometry").toString())
                .isEqualTo("{\"type\":\"Point\",\"coordinates\":[-97.0,41.0]}");
    }

    @Test
    void fieldsOfTheMetricSceneAreValidPolygonsDrawnByTheRightHandRule() throws Exception {
        Season season = ((Reading.Valid) SeasonFiles.read(Path.of("../scenarios/metric"), List.of())).season();
        String text = MapFile.text(season, ExamplePlan.plan());
        Geometry all = new GeoJsonReader().read(text);
        assertThat(all.isValid()).isTrue();
        List<Polygon> polygons = polygons(all);
        assertThat(polygons).hasSizeGreaterThan(5).allSatisfy(MapFileTest::assertRightHandRule);
        assertThat(features(text).stream()
                        .filter(feature ->
                                feature.at("/properties/kind").asText().equals("field")))
                .hasSameSizeAs(season.fields());
    }

    @Test
    void holesAndIslandsAreParted() throws Exception {
        // two polygons; the first has two holes and an island in one of them is the second
        List<GeoPoint> outer = square(0, 10, false);
        List<GeoPoint> hole = square(1, 5, false);
        List<GeoPoint> otherHole = square(6, 9, true);
        List<GeoPoint> island = square(2, 3, true);
        Season season = ExampleSeason.season(
                List.of(drawn("N40", List.of(outer, hole, otherHole, island))),
                List.of(ExampleSeason.planter("P1")),
                ExampleSeason.season().compost(),
                OptionalDouble.empty());
        String text = MapFile.text(season, ExamplePlan.plan());
        JsonNode geometry = features(text).get(0).get("geometry");
        assertThat(geometry.get("type").asText()).isEqualTo("MultiPolygon");
        List<Polygon> polygons = polygons(new GeoJsonReader().read(geometry.toString()));
        assertThat(polygons.stream().map(Polygon::getNumInteriorRing)).containsExactly(2, 0);
        assertThat(polygons).allSatisfy(MapFileTest::assertRightHandRule);
        // 10 x 10 less 4 x 4 less 3 x 3, and 1 x 1
        assertThat(polygons.stream().mapToDouble(Polygon::getArea)).containsExactly(75.0, 1.0);
    }

    @ParameterizedTest
    @MethodSource("hostileNames")
    void aNameStaysAString(String name) throws Exception {
        List<JsonNode> features = features(MapFile.text(HostileNames.season(name), HostileNames.plan(name)));
        assertThat(features.get(0).at("/properties/name").asText()).isEqualTo(name);
    }

    @Test
    void theSamePlanGivesTheSameText() {
        Plan plan = ExamplePlan.plan();
        assertThat(MapFile.text(ExampleSeason.season(), plan)).isEqualTo(MapFile.text(ExampleSeason.season(), plan));
    }

    private static void assertRightHandRule(Polygon polygon) {
        // RFC 7946, section 3.1.6: exterior rings are counterclockwise, interior rings clockwise
        assertThat(Orientation.isCCW(polygon.getExteriorRing().getCoordinates()))
                .isTrue();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            assertThat(Orientation.isCCW(polygon.getInteriorRingN(i).getCoordinates()))
                    .isFalse();
        }
    }

    private static List<Polygon> polygons(Geometry geometry) {
        return flat(geometry)
                .filter(Polygon.class::isInstance)
                .map(Polygon.class::cast)
                .toList();
    }

    private static Stream<Geometry> flat(Geometry geometry) {
        return geometry instanceof GeometryCollection
                ? IntStream.range(0, geometry.getNumGeometries())
                        .mapToObj(geometry::getGeometryN)
                        .flatMap(MapFileTest::flat)
                : Stream.of(geometry);
    }

    private static List<JsonNode> features(String text) throws Exception {
        JsonNode map = JSON.readTree(text);
        assertThat(map.get("type").asText()).isEqualTo("FeatureCollection");
        List<JsonNode> features =
                StreamSupport.stream(map.get("features").spliterator(), false).toList();
        // RFC 7946, section 3.2
        assertThat(features)
                .allMatch(feature -> feature.get("type").asText().equals("Feature")
                        && feature.has("geometry")
                        && feature.get("properties").isObject());
        return features;
    }

    private static List<GeoPoint> square(double from, double to, boolean clockwise) {
        GeoPoint corner = new GeoPoint(from, from);
        GeoPoint east = new GeoPoint(from, to);
        GeoPoint north = new GeoPoint(to, from);
        GeoPoint far = new GeoPoint(to, to);
        return clockwise ? List.of(corner, north, far, east, corner) : List.of(corner, east, far, north, corner);
    }

    private static Field drawn(String id, List<List<GeoPoint>> outline) {
        return WithDefaults.field(
                id,
                id,
                8,
                Optional.empty(),
                outline,
                "corn",
                new DateWindow(MONDAY, MONDAY.plusDays(6)),
                "standard",
                Drainage.MODERATE,
                1,
                Set.of());
    }
}
