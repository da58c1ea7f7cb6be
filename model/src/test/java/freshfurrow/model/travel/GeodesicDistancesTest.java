package freshfurrow.model.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.GeoPoint;
import java.util.Map;
import org.junit.jupiter.api.Test;

class GeodesicDistancesTest {
    private static final Map<String, GeoPoint> POINTS = Map.of(
            "Wellington",
            new GeoPoint(-41.32, 174.81),
            "Salamanca",
            new GeoPoint(40.96, -5.50),
            "New York",
            new GeoPoint(40.6, -73.8),
            "Paris",
            new GeoPoint(49.01666667, 2.55));

    /** The worked example of GeographicLib's documentation (Karney): 19,959,679.267 m. */
    @Test
    void agreesWithThePublishedExample() {
        assertThat(distances(1).metres("Wellington", "Salamanca")).isCloseTo(19_959_679.267, within(0.001));
    }

    /** GeographicLib's own test GeodSolve0: 5,853,226 m. */
    @Test
    void agreesWithThePublishedTest() {
        assertThat(distances(1).metres("New York", "Paris")).isCloseTo(5_853_226, within(0.5));
    }

    @Test
    void isTheSameBothWaysAndNothingOnTheSpot() {
        assertThat(distances(1).metres("Paris", "New York"))
                .isCloseTo(distances(1).metres("New York", "Paris"), within(1e-6));
        assertThat(distances(1.3).metres("Paris", "Paris")).isZero();
    }

    @Test
    void theRoadIsLongerByItsFactor() {
        assertThat(distances(1.3).metres("New York", "Paris"))
                .isCloseTo(1.3 * distances(1).metres("New York", "Paris"), within(1e-6));
    }

    @Test
    void aRoadShorterThanTheStraightLineIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> distances(0.9)).withMessageContaining("0.9");
    }

    @Test
    void anUnknownPlaceIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> distances(1).metres("Paris", "Rome"))
                .withMessage("no place Rome");
    }

    private static GeodesicDistances distances(double roadFactor) {
        return new GeodesicDistances(POINTS, roadFactor);
    }
}
