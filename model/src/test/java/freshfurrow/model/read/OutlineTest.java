package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Geodesic areas that GeographicLib (Karney 2013) publishes in its own tests, and areas of parts. */
final class OutlineTest {
    /** GeographicLib's planimeter test: the square of one degree at the equator, 12,308,778,361.469 m2. */
    @Test
    void aSquareOfOneDegreeIsAsInTheLibrarysTests() {
        assertThat(new Outline(List.of(List.of(square(0, 0, 1)))).areaM2()).isCloseTo(12_308_778_361.469, within(0.01));
    }

    /** GeographicLib's planimeter test: a ring along the coast of Antarctica, 13,662,703,680,020.1 m2. */
    @Test
    void theRingRoundAntarcticaIsAsInTheLibrarysTests() {
        double[][] coast = {
            {-63.1, -58},
            {-72.9, -74},
            {-71.9, -102},
            {-74.9, -102},
            {-74.3, -131},
            {-77.5, -163},
            {-77.4, 163},
            {-71.7, 172},
            {-65.9, 140},
            {-65.7, 113},
            {-66.6, 88},
            {-66.9, 59},
            {-69.8, 25},
            {-70.0, -4},
            {-71.0, -14},
            {-77.3, -33},
            {-77.9, -46},
            {-74.7, -61}
        };
        List<GeoPoint> ring = new ArrayList<>();
        for (double[] point : coast) {
            ring.add(new GeoPoint(point[0], point[1]));
        }
        ring.add(ring.get(0));
        assertThat(new Outline(List.of(List.of(ring))).areaM2()).isCloseTo(13_662_703_680_020.1, within(1.0));
    }

    @Test
    void theDirectionOfARingDoesNotMatter() {
        List<GeoPoint> back = new ArrayList<>(square(41, -97, 0.01));
        java.util.Collections.reverse(back);
        assertThat(area(List.of(back))).isEqualTo(area(List.of(square(41, -97, 0.01))));
    }

    @Test
    void aHoleIsTakenOut() {
        double hole = area(List.of(square(41.004, -96.996, 0.002)));
        assertThat(area(List.of(square(41, -97, 0.01), square(41.004, -96.996, 0.002))))
                .isCloseTo(area(List.of(square(41, -97, 0.01))) - hole, within(1e-6));
        assertThat(hole).isBetween(30_000.0, 40_000.0);
    }

    @Test
    void severalPolygonsAreAddedUp() {
        List<List<GeoPoint>> west = List.of(square(41, -97, 0.01));
        List<List<GeoPoint>> east = List.of(square(41, -96.9, 0.01));
        assertThat(new Outline(List.of(west, east)).areaM2()).isCloseTo(area(west) + area(east), within(1e-6));
    }

    private static double area(List<List<GeoPoint>> rings) {
        return new Outline(List.of(rings)).areaM2();
    }

    private static List<GeoPoint> square(double lat, double lon, double side) {
        return List.of(
                new GeoPoint(lat, lon),
                new GeoPoint(lat, lon + side),
                new GeoPoint(lat + side, lon + side),
                new GeoPoint(lat + side, lon),
                new GeoPoint(lat, lon));
    }
}
