package freshfurrow.app.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.app.begin.UnusableMap;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Coordinates of .prj files, against worked examples of IOGP Publication 373-7-2 (EPSG Guidance Note 7-2), from memory. */
final class MapProjectionTest {
    private static final double HUNDREDTH_OF_A_METRE = 1e-7;

    private static Shapefile read(String prj, double x, double y) throws UnusableMap {
        byte[] shp = ShpBytes.polygons(List.of(List.of(ShpBytes.square(x, y, 100))));
        return Shapefile.read(shp, Optional.empty(), Optional.empty(), Optional.of(prj));
    }

    private static void assertCorner(String prj, double x, double y, double lon, double lat, double tolerance)
            throws UnusableMap {
        ShapefileTest.assertDegrees(
                read(prj, x, y).fields().shapes().orElseThrow().get(0).at("/coordinates/0/0"), lon, lat, tolerance);
    }

    private static String projected(
            String name, String geographic, String projection, String unit, Object... parameters) {
        StringBuilder text =
                new StringBuilder("PROJCS[\"" + name + "\"," + geographic + ",PROJECTION[\"" + projection + "\"]");
        for (int i = 0; i < parameters.length; i += 2) {
            text.append(",PARAMETER[\"" + parameters[i] + "\"," + parameters[i + 1] + "]");
        }
        return text + "," + unit + "]";
    }

    private static String geographic(String datum, String spheroid) {
        return "GEOGCS[\"GCS\",DATUM[\"" + datum + "\",SPHEROID[" + spheroid
                + "]],PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";
    }

    private static final String WGS84 = geographic("D_WGS_1984", "\"WGS_1984\",6378137.0,298.257223563");
    private static final String METRES = "UNIT[\"Meter\",1.0]";
    private static final String US_FEET = "UNIT[\"Foot_US\",0.3048006096012192]";

    /** Lambert Conic Conformal (2SP), Texas South Central of 1927 on Clarke 1866, in US survey feet: its datum is left as it is here. */
    @Test
    void lambertConicInUsFeet() throws Exception {
        String prj = projected(
                "Texas South Central",
                geographic("Clarke_alone", "\"Clarke_1866\",6378206.4,294.9786982"),
                "Lambert_Conformal_Conic",
                US_FEET,
                "False_Easting",
                2000000,
                "False_Northing",
                0,
                "Central_Meridian",
                -99,
                "Standard_Parallel_1",
                28 + 23 / 60.0,
                "Standard_Parallel_2",
                30 + 17 / 60.0,
                "Latitude_Of_Origin",
                27 + 50 / 60.0);

        // 28 30 N, 96 00 W is E 2,963,503.91, N 254,759.80 US survey feet; on its own ellipsoid, which is taken for the
        // Earth
        assertThat(read(prj, 2_963_503.91, 254_759.80).said().get(0))
                .isEqualTo("By the .prj file, its coordinates are of Texas South Central, in US survey feet. "
                        + "Its datum is taken as if it were WGS84, so that places may be off by 100 m or more.");
        assertCorner(prj, 2_963_503.91, 254_759.80, -96, 28.5, HUNDREDTH_OF_A_METRE);
    }

    /** Transverse Mercator, the British grid on Airy 1830. */
    @Test
    void transverseMercator() throws Exception {
        String prj = projected(
                "British National Grid",
                geographic("Airy_alone", "\"Airy_1830\",6377563.396,299.32496"),
                "Transverse_Mercator",
                METRES,
                "False_Easting",
                400000,
                "False_Northing",
                -100000,
                "Central_Meridian",
                -2,
                "Scale_Factor",
                0.9996012717,
                "Latitude_Of_Origin",
                49);

        assertCorner(prj, 577_274.99, 69_740.50, 0.5, 50.5, HUNDREDTH_OF_A_METRE);
    }

    /** By hand: on the central meridian of a UTM zone the equator is at 500,000 m east and 0 m north. */
    @Test
    void utmOnWgs84() throws Exception {
        String prj = projected(
                "WGS_1984_UTM_Zone_14N",
                WGS84,
                "Transverse_Mercator",
                METRES,
                "False_Easting",
                500000.0,
                "False_Northing",
                0.0,
                "Central_Meridian",
                -99.0,
                "Scale_Factor",
                0.9996,
                "Latitude_Of_Origin",
                0.0);

        assertCorner(prj, 500_000, 0, -99, 0, HUNDREDTH_OF_A_METRE);
        assertThat(read(prj, 500_000, 0).said().get(0))
                .isEqualTo("By the .prj file, its coordinates are of WGS_1984_UTM_Zone_14N, in metres.");
    }

    /** By hand: x = 6,378,137 m x pi / 180 a degree of longitude. */
    @Test
    void mercatorOfWebMaps() throws Exception {
        String prj = projected(
                "WGS_1984_Web_Mercator_Auxiliary_Sphere",
                WGS84,
                "Mercator_Auxiliary_Sphere",
                METRES,
                "False_Easting",
                0.0,
                "False_Northing",
                0.0,
                "Central_Meridian",
                0.0,
                "Standard_Parallel_1",
                0.0,
                "Auxiliary_Sphere_Type",
                0.0);

        assertCorner(prj, -97 * 6_378_137 * Math.PI / 180, 0, -97, 0, HUNDREDTH_OF_A_METRE);
    }

    /**
     * By the mean shift of the conterminous states, -8 m, 160 m and 176 m in space; what that is north and up depends on both ellipsoids and
     * comes to less than 10 m north.
     */
    @Test
    void theDatumOf1927IsMovedByItsMean() throws Exception {
        String nad27 = geographic("D_North_American_1927", "\"Clarke_1866\",6378206.4,294.9786982");
        byte[] shp = ShpBytes.polygons(List.of(List.of(ShpBytes.square(-98, 40, 0.01))));
        Shapefile read = Shapefile.read(shp, Optional.empty(), Optional.empty(), Optional.of(nad27));

        // east = -sin(lon) dx + cos(lon) dy = 0.990268 x -8 + -0.139173 x 160 = -30.19 m, of 85,394 m a degree at 40 N
        ShapefileTest.assertDegrees(
                read.fields().shapes().orElseThrow().get(0).at("/coordinates/0/0"), -98 - 30.19 / 85_394, 40, 1e-4);
        assertThat(read.said().get(0)).contains("places may be off by 10 m or more");
    }

    @Test
    void degreesStayDegrees() throws Exception {
        byte[] shp = ShpBytes.polygons(List.of(List.of(ShpBytes.square(-97, 41, 0.01))));
        Shapefile read = Shapefile.read(shp, Optional.empty(), Optional.empty(), Optional.of(WGS84));

        ShapefileTest.assertDegrees(read.fields().shapes().orElseThrow().get(0).at("/coordinates/0/0"), -97, 41, 1e-9);
        assertThat(read.said().get(0)).isEqualTo("By the .prj file, its coordinates are of GCS, in degrees.");
    }

    @Test
    void aProjectionThatIsNotKnownIsNamed() {
        String prj = projected("Grid", WGS84, "Krovak", METRES);

        assertThatThrownBy(() -> read(prj, 0, 0))
                .isInstanceOf(UnusableMap.class)
                .hasMessage("The projection of the .prj file, krovak, is not known here. "
                        + "Save the shapefile in degrees (WGS 84, EPSG:4326), or as GeoJSON or KML.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "PROJCS",
                "GEOGCS[",
                "GEOGCS[\"a",
                "GEOGCS[\"a\"]",
                "GEOGCS[\"a\"] and more",
                "GEOGCS[\"a\",DATUM[\"b\",SPHEROID[\"c\",x,y]]]",
                "A[B[C[D[E[F[G[H[I[J[K[L[M[N[O[P[Q[R[S[T[U[V[W[X[1]]]]]]]]]]]]]]]]]]]]]]]]",
            })
    void textThatIsNoCoordinateSystemIsRefused(String prj) {
        assertThatThrownBy(() -> read(prj, 0, 0)).isInstanceOf(UnusableMap.class);
    }

    @Test
    void coordinatesThatAreNowhereAreRefused() {
        assertThatThrownBy(() -> read(WGS84, 650_000, 4_540_000))
                .hasMessageContaining("is nowhere on earth by its .prj file");
    }
}
