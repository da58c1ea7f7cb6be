package freshfurrow.model.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.Distances;
import freshfurrow.model.season.GeoPoint;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Distances that GeographicLib (Karney 2013, Algorithms for geodesics) publishes in its documentation and its own tests. */
final class GeodesicDistancesTest {
    private static final Map<String, GeoPoint> POINTS = Map.of(
            "wellington", new GeoPoint(-41.32, 174.81),
            "salamanca", new GeoPoint(40.96, -5.50),
            "jfk", new GeoPoint(40.6, -73.8),
            "cdg", new GeoPoint(49 + 1.0 / 60, 2 + 33.0 / 60));

    /** The inverse problem of GeographicLib's documentation, nearly half-way round the earth. */
    @Test
    void halfWayRoundTheEarthIsAsDocumented() {
        assertThat(straight("wellington", "salamanca")).isCloseTo(19_959_679.267, within(0.001));
    }

    /** GeographicLib's test GeodSolve0: 40.6 N 73.8 W to 49d01'N 2d33'E. */
    @Test
    void overTheAtlanticIsAsInTheLibrarysTests() {
        assertThat(straight("jfk", "cdg")).isCloseTo(5_853_226, within(0.5));
    }

    @Test
    void aRoadIsTheStraightDistanceTimesTheRoadFactorInBothDirections() {
        Distances roads = new GeodesicDistances(POINTS, 1.3);
        assertThat(roads.metres("jfk", "cdg")).isEqualTo(1.3 * straight("jfk", "cdg"));
        assertThat(roads.metres("cdg", "jfk")).isCloseTo(roads.metres("jfk", "cdg"), within(1e-6));
    }

    private static double straight(String from, String to) {
        return new GeodesicDistances(POINTS, 1).metres(from, to);
    }
}
