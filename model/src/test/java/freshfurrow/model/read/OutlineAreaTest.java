package freshfurrow.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The geodesic area of polygons on WGS84 against areas that others have published. */
class OutlineAreaTest {
    private static final List<GeoPoint> DEGREE_SQUARE = ring(0, 0, 0, 1, 1, 1, 1, 0);

    /** Documented example of the geographiclib-rs port of GeographicLib: one degree square at the equator. */
    @Test
    void ofADegreeSquareIsThePublishedOne() {
        assertThat(areaM2(List.of(List.of(DEGREE_SQUARE)))).isCloseTo(12_308_778_361.469, within(0.01));
    }

    /** GeographicLib's own test Planimeter2: a square on its corner around (0, 0). */
    @Test
    void ofASquareOnItsCornerIsThePublishedOne() {
        assertThat(areaM2(List.of(List.of(ring(0, -1, -1, 0, 0, 1, 1, 0))))).isCloseTo(24_619_419_146.0, within(1.0));
    }

    /** GeographicLib's own test Planimeter15: a triangle, here both ways round. */
    @Test
    void ofATriangleIsThePublishedOneWhicheverWayItIsDrawn() {
        double published = 18_454_562_325.45119;
        assertThat(areaM2(List.of(List.of(ring(2, 1, 1, 2, 3, 3))))).isCloseTo(published, within(0.01));
        assertThat(areaM2(List.of(List.of(ring(3, 3, 1, 2, 2, 1))))).isCloseTo(published, within(0.01));
    }

    @Test
    void leavesHolesOut() {
        List<GeoPoint> hole = ring(0.2, 0.2, 0.4, 0.2, 0.4, 0.4, 0.2, 0.4);
        double whole = areaM2(List.of(List.of(DEGREE_SQUARE)));
        assertThat(areaM2(List.of(List.of(DEGREE_SQUARE, hole))))
                .isCloseTo(whole - areaM2(List.of(List.of(hole))), within(0.01));
    }

    @Test
    void addsUpThePartsOfAField() {
        List<GeoPoint> apart = ring(3, 3, 3, 4, 4, 4);
        assertThat(areaM2(List.of(List.of(DEGREE_SQUARE), List.of(apart))))
                .isCloseTo(areaM2(List.of(List.of(DEGREE_SQUARE))) + areaM2(List.of(List.of(apart))), within(0.01));
    }

    private static double areaM2(List<List<List<GeoPoint>>> polygons) {
        return new Outline(polygons).areaM2();
    }

    /** A closed ring of latitudes and longitudes in turn. */
    private static List<GeoPoint> ring(double... latLon) {
        List<GeoPoint> ring = new ArrayList<>();
        for (int i = 0; i < latLon.length; i += 2) {
            ring.add(new GeoPoint(latLon[i], latLon[i + 1]));
        }
        ring.add(ring.get(0));
        return ring;
    }
}
