package freshfurrow.model.travel;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.season.Distances;
import freshfurrow.model.season.GeoPoint;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class RoadTableTest {
    @Property
    void holdsTheGeodesicsRoundedUpWhereverThePlacesLie(
            @ForAll @DoubleRange(min = -90, max = 90) double lat,
            @ForAll @DoubleRange(min = -180, max = 180) double lon,
            @ForAll @DoubleRange(min = 0, max = 7) double apartDegrees,
            @ForAll @DoubleRange(min = 1, max = 10) double roadFactor,
            @ForAll long seed) {
        Map<String, GeoPoint> points = spread(lat, lon, apartDegrees, 6, seed);
        Distances roads = new GeodesicDistances(points, roadFactor);
        List<String> ids = List.copyOf(points.keySet());
        RoadTable table = RoadTable.of(ids, roads);
        for (int a = 0; a < ids.size(); a++) {
            for (int b = 0; b < a; b++) {
                double metres = roads.metres(ids.get(a), ids.get(b));
                assertThat(roads.atLeast(ids.get(a), ids.get(b))).isLessThanOrEqualTo(metres);
                assertThat(roads.atMost(ids.get(a), ids.get(b))).isGreaterThanOrEqualTo(metres);
                assertThat(table.metres(a, b)).isEqualTo((int) Math.ceil(metres));
                assertThat(table.metres(b, a)).isEqualTo(table.metres(a, b));
            }
        }
    }

    /** Of places within some 60 km of one another less than one pair in twenty. */
    @Test
    void fewGeodesicsAreAskedForWherePlacesAreNear() {
        Map<String, GeoPoint> points = spread(41, -96, 0.25, 200, 1);
        Distances roads = new GeodesicDistances(points, 1.3);
        AtomicInteger asked = new AtomicInteger();
        RoadTable.of(List.copyOf(points.keySet()), counting(roads, asked));
        assertThat(asked.get()).isLessThan(200 * 199 / 2 / 20);
    }

    @Test
    void theSamePlacesAreNotMeasuredAgain() {
        List<String> ids = List.of("yard", "well", "N40");
        RoadTable table = RoadTable.of(ids, (from, to) -> from.equals(to) ? 0 : 1200.5);
        assertThat(RoadTable.of(ids, table)).isSameAs(table);
        RoadTable fewer = RoadTable.of(ids.subList(0, 2), table);
        assertThat(fewer.metres("well", "yard")).isEqualTo(1201);
        assertThat(fewer.metres("yard", "yard")).isZero();
    }

    private static Distances counting(Distances roads, AtomicInteger asked) {
        return new Distances() {
            @Override
            public double metres(String from, String to) {
                asked.incrementAndGet();
                return roads.metres(from, to);
            }

            @Override
            public double atLeast(String from, String to) {
                return roads.atLeast(from, to);
            }

            @Override
            public double atMost(String from, String to) {
                return roads.atMost(from, to);
            }
        };
    }

    private static Map<String, GeoPoint> spread(double lat, double lon, double apartDegrees, int count, long seed) {
        Random random = new Random(seed);
        Map<String, GeoPoint> points = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            double north = lat + apartDegrees * (2 * random.nextDouble() - 1);
            double east = lon + apartDegrees * (2 * random.nextDouble() - 1);
            points.put("F" + i, new GeoPoint(Math.max(-90, Math.min(90, north)), Math.max(-180, Math.min(180, east))));
        }
        return points;
    }
}
