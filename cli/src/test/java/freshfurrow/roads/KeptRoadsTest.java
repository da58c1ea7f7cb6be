package freshfurrow.roads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.roads.MachineSize;
import freshfurrow.model.roads.MeasuredRoads;
import freshfurrow.model.roads.RoadAnswer;
import freshfurrow.model.roads.RoadMeasuring;
import freshfurrow.model.roads.UnusableMap;
import freshfurrow.model.season.FromTo;
import freshfurrow.model.season.GeoPoint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is measured once is not measured again, and nothing that is kept makes a difference. */
class KeptRoadsTest {
    private static final OsmMap MAP = new OsmMap()
            .point(1, 41.00, -97)
            .point(2, 41.02, -97)
            .point(3, 41.02, -96.98)
            .way(List.of(1, 2, 3), "highway=unclassified");
    private static final FromTo THERE = new FromTo("yard", "field");

    @TempDir
    private Path folder = Path.of("");

    private Path map = Path.of("");
    private Path kept = Path.of("");

    private final Map<String, GeoPoint> places =
            new TreeMap<>(Map.of("field", new GeoPoint(41.02, -96.98), "yard", new GeoPoint(41, -97)));

    @BeforeEach
    void write() {
        map = MAP.writtenTo(folder.resolve("county.osm"));
        kept = folder.resolve("roads-measured");
    }

    private MeasuredRoads roads() throws UnusableMap {
        MachineSize any = new MachineSize(OptionalDouble.empty(), OptionalDouble.empty());
        return ((RoadAnswer.All) new RoadMeasuring(map, kept, any, places).measured()).roads();
    }

    private List<Path> files(Path in) throws IOException {
        try (Stream<Path> files = Files.list(in)) {
            return files.sorted().toList();
        }
    }

    private Path table() throws IOException {
        return files(kept).stream()
                .filter(file ->
                        file.toString().endsWith(".txt") && !file.toString().endsWith(".ways.txt"))
                .findFirst()
                .orElseThrow();
    }

    private void forgetGraphs() throws IOException {
        try (Stream<Path> all = Files.walk(kept.resolve("maps"))) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    @Test
    void theSecondTimeNoMapIsRead() throws Exception {
        MeasuredRoads first = roads();
        forgetGraphs();

        assertThat(roads()).isEqualTo(first);
        assertThat(kept.resolve("maps")).doesNotExist();
    }

    @Test
    void whatWasMeasuredHoldsWithoutTheMap() throws Exception {
        MeasuredRoads first = roads();
        Map<FromTo, List<GeoPoint>> ways = first.ways(Set.of(THERE));
        Files.delete(map);
        forgetGraphs();

        assertThat(roads()).isEqualTo(first);
        assertThat(roads().ways(Set.of(THERE))).isEqualTo(ways).hasSize(1);
        assertThat(roads().ways(Set.of(new FromTo("field", "yard")))).isEmpty();
    }

    @Test
    void withoutMapAndMeasuresThereIsNothing() throws Exception {
        Files.delete(map);

        assertThatThrownBy(this::roads).isInstanceOf(UnusableMap.class).hasMessage("does not exist");
    }

    @Test
    void anotherMapIsMeasuredAgain() throws Exception {
        MeasuredRoads first = roads();
        first.ways(Set.of(THERE));
        new OsmMap()
                .point(1, 41.00, -97)
                .point(3, 41.02, -96.98)
                .way(List.of(1, 3), "highway=unclassified")
                .writtenTo(map);
        MeasuredRoads second = roads();

        assertThat(second.metres("yard", "field")).isLessThan(first.metres("yard", "field"));
        assertThat(second.ways(Set.of(THERE)).get(THERE)).hasSize(2);
        assertThat(files(kept.resolve("maps"))).hasSize(2);
    }

    @Test
    void anotherPlaceIsMeasuredOnTheSameGraph() throws Exception {
        roads();
        places.put("well", new GeoPoint(41.01, -97));

        assertThat(roads().metres("yard", "well")).isEqualTo(1_112);
        assertThat(files(kept.resolve("maps"))).hasSize(1);
    }

    @Test
    void whatIsBrokenIsMeasuredAgain() throws Exception {
        MeasuredRoads first = roads();
        String whole = Files.readString(table());
        for (String broken : List.of("", "freshfurrow roads 1", whole.replace("3", "x"), whole + "1 2 3\n")) {
            Files.writeString(table(), broken);

            assertThat(roads()).as(broken).isEqualTo(first);
            assertThat(table()).hasContent(whole);
        }
    }

    @Test
    void aBrokenGraphIsReadForThisTimeOnly() throws Exception {
        MeasuredRoads first = roads();
        for (Path part : files(files(kept.resolve("maps")).get(0))) {
            Files.writeString(part, "broken");
        }
        Files.delete(table());

        assertThat(roads()).isEqualTo(first);
    }

    @Test
    void brokenWaysAreFoundAgain() throws Exception {
        Map<FromTo, List<GeoPoint>> ways = roads().ways(Set.of(THERE));
        Path file = files(kept).stream()
                .filter(path -> path.toString().endsWith(".ways.txt"))
                .findFirst()
                .orElseThrow();
        String whole = Files.readString(file);
        for (String broken : List.of("", "freshfurrow ways 1\n", whole.replace(":", ": 999999999 "), whole + "0\n")) {
            Files.writeString(file, broken);

            assertThat(roads().ways(Set.of(THERE))).as(broken).isEqualTo(ways);
        }
    }

    @Test
    void whereNothingCanBeKeptItIsMeasuredEachTime() throws Exception {
        Files.writeString(kept, "in the way");

        assertThat(roads()).isEqualTo(roads());
        assertThat(kept).hasContent("in the way");
    }

    @Test
    void whoeverWasKilledLeavesNothingForLong() throws Exception {
        Path left = kept.resolve("maps").resolve(".freshfurrow.01234567-89ab-cdef-0123-456789abcdef.tmp");
        Files.createDirectories(left);
        Files.writeString(left.resolve("nodes"), "half");
        roads();

        assertThat(left).doesNotExist();
    }

    @Test
    void severalAtOnceReadOneMapOnce() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<MeasuredRoads>> all = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                all.add(threads.submit(this::roads));
            }
            for (Future<MeasuredRoads> one : all) {
                assertThat(one.get()).isEqualTo(roads());
            }
        } finally {
            threads.shutdownNow();
        }
        assertThat(files(kept.resolve("maps"))).hasSize(1);
        assertThat(files(kept)).hasSize(2);
    }
}
