package freshfurrow.roads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.roads.MachineSize;
import freshfurrow.model.roads.MeasuredRoads;
import freshfurrow.model.roads.RoadAnswer;
import freshfurrow.model.roads.RoadMeasuring;
import freshfurrow.model.season.FromTo;
import freshfurrow.model.season.GeoPoint;
import freshfurrow.model.travel.GeodesicDistances;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Distances on a sphere of 6,371,000 m, by the haversine formula (Sinnott, 'Virtues of the Haversine', Sky and Telescope 68, 1984), as
 * GraphHopper has it. Along a meridian that is 6,371,000 x pi / 180 = 111,194.93 m a degree.
 */
class FarmSurveyTest {
    private static final double M_PER_DEGREE = 6_371_000 * Math.PI / 180;
    private static final MachineSize ANY = new MachineSize(OptionalDouble.empty(), OptionalDouble.empty());

    @TempDir
    private Path folder = Path.of("");

    private final Map<String, GeoPoint> places = new LinkedHashMap<>();

    private FarmSurveyTest at(String id, double lat, double lon) {
        places.put(id, new GeoPoint(lat, lon));
        return this;
    }

    private RoadAnswer answer(OsmMap map, MachineSize size) throws Exception {
        Path file = map.writtenTo(folder.resolve("county.osm"));
        return new RoadMeasuring(file, folder.resolve("roads-measured"), size, places).measured();
    }

    private MeasuredRoads roads(OsmMap map, MachineSize size) throws Exception {
        return ((RoadAnswer.All) answer(map, size)).roads();
    }

    private static MachineSize weighing(double kg) {
        return new MachineSize(OptionalDouble.empty(), OptionalDouble.of(kg));
    }

    /** A road along a meridian from 41.00 to 41.03 N, and a loop over the east that is longer. */
    private static OsmMap ladder(String... tagsOfTheShortWay) {
        return new OsmMap()
                .point(1, 41.00, -97)
                .point(2, 41.01, -97)
                .point(3, 41.02, -97)
                .point(4, 41.03, -97)
                .point(5, 41.01, -96.98)
                .point(6, 41.02, -96.98)
                .way(List.of(1, 2), "highway=tertiary")
                .way(List.of(2, 3), tagsOfTheShortWay)
                .way(List.of(3, 4), "highway=tertiary")
                .way(List.of(2, 5, 6, 3), "highway=unclassified");
    }

    /** From 41.00 to 41.03 N straight: 0.03 degrees, 3,335.85 m. */
    private static final double SHORT_M = 0.03 * M_PER_DEGREE;

    /** Over the east: two parallels of 0.02 degrees more. */
    private static final double LONG_M = SHORT_M + parallel(41.01, 0.02) + parallel(41.02, 0.02);

    private static double parallel(double lat, double degrees) {
        double half = Math.sin(Math.toRadians(degrees) / 2) * Math.cos(Math.toRadians(lat));
        return 2 * 6_371_000 * Math.asin(half);
    }

    private double fromYardToField(OsmMap map, MachineSize size) throws Exception {
        at("yard", 41.00, -97).at("field", 41.03, -97);
        return roads(map, size).metres("yard", "field");
    }

    @Test
    void wholeMetresAreRoundedUpAlongAMeridian() throws Exception {
        assertThat(fromYardToField(ladder("highway=tertiary"), ANY)).isEqualTo(3_336);
    }

    @Test
    void alongAParallelAMetreIsMoreOfADegree() throws Exception {
        at("west", 41.01, -97).at("east", 41.01, -96.98);

        // 0.02 degrees x cos 41.01 x 111,194.93 = 1,678.13 m; the chord of the parallel is shorter by less than a
        // millimetre
        assertThat(roads(ladder("highway=tertiary"), ANY).metres("west", "east"))
                .isEqualTo(1_679);
    }

    @Test
    void theSphereIsWithinSixThousandthsOfTheEllipsoid() throws Exception {
        at("yard", 41.00, -97).at("field", 41.03, -97).at("well", 41.01, -96.98);
        MeasuredRoads roads = roads(ladder("highway=tertiary"), ANY);
        GeodesicDistances geodesic = new GeodesicDistances(places, 1);

        assertThat(roads.metres("yard", "field")).isCloseTo(geodesic.metres("yard", "field"), within(0.006 * SHORT_M));
    }

    @Test
    void aPlaceBesideTheRoadIsReachedStraightFromIt() throws Exception {
        at("yard", 41.00, -97).at("field", 41.005, -97.002);

        // 0.005 degrees along the road and 0.002 degrees of the parallel from it: 555.97 + 167.84 m
        assertThat(roads(ladder("highway=tertiary"), ANY).metres("yard", "field"))
                .isEqualTo(724);
    }

    @Test
    void placesAtOnePointAreNotApart() throws Exception {
        at("yard", 41.005, -97.002).at("well", 41.005, -97.002).at("field", 41.03, -97);

        assertThat(roads(ladder("highway=tertiary"), ANY).metres("yard", "well"))
                .isZero();
    }

    /** Of 1,112 m of sand for the cropland of one owner each counts as six, and the way around has 4,468. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "highway=motorway",
                "highway=tertiary,agricultural=no",
                "highway=trunk,motorroad=yes",
                "highway=tertiary,motor_vehicle=no",
                "highway=tertiary,access=forestry",
                "highway=track,ford=yes",
                "highway=footway",
                "highway=construction",
                "highway=track,surface=sand,access=private",
                "highway=track,tracktype=grade5,access=private",
                "highway=service,maxwidth=2.9"
            })
    void whatIsClosedOrVerySlowIsDrivenAround(String tags) throws Exception {
        MachineSize narrow = new MachineSize(OptionalDouble.of(3), OptionalDouble.empty());

        assertThat(fromYardToField(ladder(tags.split(",", -1)), narrow)).isEqualTo(Math.ceil(LONG_M));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "highway=trunk",
                "highway=track",
                "highway=track,tracktype=grade4",
                "highway=track,motor_vehicle=agricultural",
                "highway=track,motor_vehicle=agricultural;forestry",
                "highway=track,access=no,agricultural=yes",
                "highway=service,access=private",
                "highway=unclassified,surface=gravel",
                "highway=trunk,motorroad=yes,agricultural=yes",
                "highway=tertiary,ford=no"
            })
    void whatIsOpenToFarmMachinesIsTaken(String tags) throws Exception {
        assertThat(fromYardToField(ladder(tags.split(",", -1)), ANY)).isEqualTo(Math.ceil(SHORT_M));
    }

    @ParameterizedTest
    @ValueSource(strings = {"barrier=bollard", "barrier=gate,access=no", "ford=yes"})
    void aBarredPointIsDrivenAround(String tags) throws Exception {
        assertThat(fromYardToField(barred(tags), ANY)).isEqualTo(Math.ceil(LONG_M));
    }

    @ParameterizedTest
    @ValueSource(strings = {"barrier=gate", "barrier=cattle_grid", "barrier=bollard,motor_vehicle=agricultural"})
    void aGateIsPassed(String tags) throws Exception {
        assertThat(fromYardToField(barred(tags), ANY)).isEqualTo(Math.ceil(SHORT_M));
    }

    private static OsmMap barred(String tags) {
        return new OsmMap()
                .point(1, 41.00, -97)
                .point(2, 41.01, -97)
                .point(3, 41.02, -97)
                .point(4, 41.03, -97)
                .point(5, 41.01, -96.98)
                .point(6, 41.02, -96.98)
                .point(7, 41.015, -97, tags.split(",", -1))
                .way(List.of(1, 2, 7, 3, 4), "highway=tertiary")
                .way(List.of(2, 5, 6, 3), "highway=unclassified");
    }

    @Test
    void ofThereAndBackTheLongerOneCounts() throws Exception {
        assertThat(fromYardToField(ladder("highway=tertiary", "oneway=yes"), ANY))
                .isEqualTo(Math.ceil(LONG_M));
        assertThat(fromYardToField(ladder("highway=tertiary", "oneway=-1"), ANY))
                .isEqualTo(Math.ceil(LONG_M));
    }

    @Test
    void aBridgeIsTakenByWhatItBears() throws Exception {
        OsmMap map = ladder("highway=tertiary", "bridge=yes", "maxweight=8");

        assertThat(fromYardToField(map, weighing(8_000))).isEqualTo(Math.ceil(SHORT_M));
        assertThat(fromYardToField(map, weighing(8_001))).isEqualTo(Math.ceil(LONG_M));
        assertThat(fromYardToField(map, ANY)).isEqualTo(Math.ceil(SHORT_M));
    }

    @Test
    void shortTonsAndPoundsAreRead() throws Exception {
        // 10 short tons are 20,000 lb, 9,071.8 kg, kept as 9.0 t; a limit of 80 t is beyond what is kept, but no
        // machine's weight is
        assertThat(fromYardToField(ladder("highway=tertiary", "maxweight=10 st"), weighing(9_000)))
                .isEqualTo(Math.ceil(SHORT_M));
        assertThat(fromYardToField(ladder("highway=tertiary", "maxweight=20000 lbs"), weighing(9_100)))
                .isEqualTo(Math.ceil(LONG_M));
        assertThat(fromYardToField(ladder("highway=tertiary", "maxweight=80"), weighing(50_000)))
                .isEqualTo(Math.ceil(SHORT_M));
    }

    @Test
    void theNarrowestOfItsWidthsCloses() throws Exception {
        OsmMap map = ladder("highway=tertiary", "maxwidth=12 ft", "maxwidth:physical=4.5");
        MachineSize narrow = new MachineSize(OptionalDouble.of(3.6), OptionalDouble.empty());
        MachineSize wide = new MachineSize(OptionalDouble.of(3.7), OptionalDouble.empty());

        // 12 ft are 3.6576 m, kept as 3.6
        assertThat(fromYardToField(map, narrow)).isEqualTo(Math.ceil(SHORT_M));
        assertThat(fromYardToField(map, wide)).isEqualTo(Math.ceil(LONG_M));
    }

    @Test
    void aDriveThatLeadsNowhereIsNoRoadToAField() throws Exception {
        OsmMap map = ladder("highway=tertiary")
                .point(20, 41.029, -97.001)
                .point(21, 41.031, -97.001)
                .way(List.of(20, 21), "highway=service");
        at("yard", 41.00, -97).at("field", 41.03, -97.0009);

        // 75.52 m of the parallel to the road, though the drive is nearer
        assertThat(roads(map, ANY).metres("yard", "field")).isEqualTo(Math.ceil(SHORT_M + parallel(41.03, 0.0009)));
    }

    @Test
    void placesFarFromEveryRoadAreNamed() throws Exception {
        at("yard", 41.00, -97).at("near", 41.03 + 999 / M_PER_DEGREE, -97).at("far", 41.03 + 1_001 / M_PER_DEGREE, -97);
        at("abroad", 52, 13);

        assertThat(answer(ladder("highway=tertiary"), ANY)).isEqualTo(new RoadAnswer.OffRoad(List.of("far", "abroad")));
    }

    @Test
    void placesWithNoWayBetweenThemAreNamed() throws Exception {
        OsmMap map = ladder("highway=tertiary")
                .point(30, 41.00, -96.9)
                .point(31, 41.02, -96.9)
                .way(List.of(30, 31), "highway=tertiary");
        at("yard", 41.00, -97).at("field", 41.01, -96.9);

        assertThat(answer(map, ANY)).isEqualTo(new RoadAnswer.NoWay(List.of(new FromTo("yard", "field"))));
    }

    @Test
    void waysFollowTheRoadFromPlaceToPlace() throws Exception {
        at("yard", 41.00, -97.001).at("field", 41.03, -97);
        FromTo there = new FromTo("yard", "field");
        MeasuredRoads roads = roads(ladder("highway=motorway"), ANY);

        assertThat(roads.ways(Set.of(there)).get(there))
                .containsExactly(
                        new GeoPoint(41.00, -97.001),
                        new GeoPoint(41.00, -97),
                        new GeoPoint(41.01, -97),
                        new GeoPoint(41.01, -96.98),
                        new GeoPoint(41.02, -96.98),
                        new GeoPoint(41.02, -97),
                        new GeoPoint(41.03, -97));
    }

    @Test
    void thereAndBackAreTwoWaysWhereARoadIsOneWay() throws Exception {
        at("yard", 41.00, -97).at("field", 41.03, -97);
        FromTo there = new FromTo("yard", "field");
        FromTo back = new FromTo("field", "yard");
        Map<FromTo, List<GeoPoint>> ways =
                roads(ladder("highway=tertiary", "oneway=yes"), ANY).ways(Set.of(there, back));

        assertThat(ways.get(there)).containsExactly(new GeoPoint(41.00, -97), new GeoPoint(41.03, -97));
        assertThat(ways.get(back)).hasSize(6);
    }
}
