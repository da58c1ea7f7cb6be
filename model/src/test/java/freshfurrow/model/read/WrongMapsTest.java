package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** GeoJSON (RFC 7946) with something wrong in it. */
final class WrongMapsTest {
    private static final String MAP = """
            {"type": "FeatureCollection", "features": [
              {"type": "Feature", "properties": {"id": "N40", "crop": "corn"},
               "geometry": {"type": "Polygon", "coordinates":
                 [[[-97.01, 41.02], [-97.00, 41.02], [-97.00, 41.03], [-97.01, 41.03], [-97.01, 41.02]]]}}
            ]}
            """;
    private static final String RING =
            "[[-97.01, 41.02], [-97.00, 41.02], [-97.00, 41.03], [-97.01, 41.03], [-97.01, 41.02]]";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theMapThatTheOtherTestsChangeIsRight() {
        assertThat(with(MAP).problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    FeatureCollection | Collection | map.geojson:1: is not a GeoJSON FeatureCollection; write {"type": "FeatureCollection", "features": […]}
                    "Feature",        | "Thing",   | map.geojson:2: features[1]: is not a GeoJSON Feature; write {"type": "Feature", …}
                    `"id": "N40", `   | ``         | map.geojson:2: features[1]: the field has no id; give it a property "id"
                    "N40"             | "N 40"     | map.geojson:2: features[1].properties.id: 'N 40' is not an id; use 1 to 40 letters, digits, - and _, starting with a letter or digit
                    `, "crop": "corn"`| ``         | map.geojson:2: N40.crop: is missing; write it like crop: corn
                    "crop": "corn"    | "crop": "oats" | map.geojson:2: features[1].properties.crop: there is no crop oats; known are corn
                    "crop": "corn"    | "crop": "corn", "area": "0 ac" | map.geojson:2: features[1].properties.area: 0 ac is out of range; use 0.003 to 49,000 ac (0.001 to 20,000 ha)
                    "crop": "corn"    | "crop": "corn", "fid": 7 | map.geojson:2: features[1].properties.fid: is not a known key; known here: name, area, crop, window, recipe, drainage, lateWeight, extractWeight, work, planters, sprayers
                    "crop": "corn"    | "crop": "corn", "entrance": "gate" | map.geojson:2: features[1].properties.entrance: is not a position; write [longitude, latitude] in degrees, like [-97.0, 41.0]
                    "Polygon"         | "Point"    | map.geojson:2: N40: has no polygon; give the feature a geometry of type Polygon or MultiPolygon
                    [-97.00, 41.03]   | [41.03, -97.00] | map.geojson:4: features[1].geometry.coordinates[1][3]: [41.03, -97.0] is not on the earth, or latitude comes first; write [longitude, latitude] in degrees, like [-97.0, 41.0]
                    [-97.00, 41.03]   | [-97.00, 410.3] | map.geojson:4: features[1].geometry.coordinates[1][3]: [-97.0, 410.3] is not on the earth; write [longitude, latitude] in degrees, like [-97.0, 41.0]
                    [-97.00, 41.03]   | ["west", 41.03] | map.geojson:4: features[1].geometry.coordinates[1][3]: is not a position; write [longitude, latitude] in degrees, like [-97.0, 41.0]
                    [-97.00, 41.03]   | -97.00     | map.geojson:4: features[1].geometry.coordinates[1][3]: is not a position; write [longitude, latitude] in degrees, like [-97.0, 41.0]
                    [-97.00, 41.03]   | NaN        | map.geojson:4: is not well-formed: Non-standard token 'NaN'; check indentation, quotes, colons and brackets here and just above
                    `, [-97.01, 41.02]]]` | ]]     | map.geojson:4: features[1].geometry.coordinates[1]: the ring is not closed; use four positions or more, the last the same as the first
                    `]}}`             | `]}}, ` | map.geojson:5: is not well-formed: Unexpected character (']' (code 93)): expected a valid value (JSON String, Number, Array, Object or token 'null', 'true' or 'false'); check indentation, quotes, colons and brackets here and just above
                    `]}}`             | `]}`       | map.geojson:5: is not well-formed: Unexpected close marker ']': expected '}' (for Object starting at line 2); check indentation, quotes, colons and brackets here and just above
                    """)
    void aMistakeInTheMapIsOneLine(String before, String after, String line) {
        assertThat(MAP).contains(before);
        assertThat(with(MAP.replace(before, after == null ? "" : after)).problems())
                .containsExactly(line);
    }

    @Test
    void aRingThatCrossesItselfIsOneLine() {
        assertThat(with(MAP.replace(
                                RING,
                                "[[-97.01, 41.02], [-97.00, 41.03], [-97.00, 41.02], [-97.01, 41.03], [-97.01, 41.02]]"))
                        .problems())
                .containsExactly(
                        "map.geojson:2: N40: the polygon is not valid near [-97.005, 41.025]: self-intersection;"
                                + " draw it again so that its rings do not cross or overlap");
    }

    @Test
    void aHoleOutsideItsFieldIsOneLine() {
        assertThat(with(MAP.replace(
                                RING,
                                RING + ", [[-96.9, 41.0], [-96.8, 41.0], [-96.8, 41.1], [-96.9, 41.1], [-96.9, 41.0]]"))
                        .problems())
                .containsExactly(
                        "map.geojson:2: N40: the polygon is not valid near [-96.9, 41.0]: hole lies outside shell;"
                                + " draw it again so that its rings do not cross or overlap");
    }

    @Test
    void aFieldAsLargeAsACountyIsOneLine() {
        assertThat(with(MAP.replace("-97.00, 41.0", "-93.00, 41.0").replace("41.03", "44.03"))
                        .problems())
                .containsExactly(
                        "map.geojson:2: N40: the polygon has an area of 1.101e+07 ha; draw the outline of a field"
                                + " of 0.003 to 49,000 ac (0.001 to 20,000 ha)");
    }

    @Test
    void aCollectionWithoutFeaturesHasNoField() {
        assertThat(with("{\"type\": \"FeatureCollection\", \"features\": []}").problems())
                .containsExactly("season.yaml:10: fields: there is no field; write at least one field");
    }

    @Test
    void twoFeaturesOfOneIdAreOneLine() {
        String feature = MAP.substring(MAP.indexOf("  {\"type\": \"Feature\""), MAP.lastIndexOf("]}"));
        assertThat(with(MAP.replace(feature, feature.strip() + ",\n" + feature)).problems())
                .containsExactly(
                        "map.geojson:5: N40: the id N40 is taken by map.geojson:2 already; give fields, places and"
                                + " water points ids of their own");
    }

    private WrittenSeason with(String map) {
        return WrittenSeason.in(folder).withFields("map.geojson", map);
    }
}
