package freshfurrow.roads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.roads.MachineSize;
import freshfurrow.model.roads.RoadAnswer;
import freshfurrow.model.roads.RoadMeasuring;
import freshfurrow.model.roads.UnusableMap;
import freshfurrow.model.season.GeoPoint;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that hold a map, and those that only say so. */
class RoadFileTest {
    private static final OsmMap MAP = new OsmMap()
            .point(1, 41.00, -97)
            .point(2, 41.01, -97, "barrier=gate")
            .point(3, 41.02, -96.98)
            .way(List.of(1, 2, 3), "highway=unclassified", "surface=gravel");

    @TempDir
    private Path folder = Path.of("");

    private RoadAnswer answer(String name, byte[] content) throws Exception {
        Path file = Files.write(folder.resolve(name), content);
        MachineSize any = new MachineSize(OptionalDouble.empty(), OptionalDouble.empty());
        Map<String, GeoPoint> places =
                new TreeMap<>(Map.of("field", new GeoPoint(41.02, -96.98), "yard", new GeoPoint(41, -97)));
        return new RoadMeasuring(file, folder.resolve("roads-measured"), any, places).measured();
    }

    private double metres(String name, byte[] content) throws Exception {
        return ((RoadAnswer.All) answer(name, content)).roads().metres("yard", "field");
    }

    private static byte[] xml(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void xmlAndPbfHoldTheSameMap() throws Exception {
        double byXml = metres("county.osm", xml(MAP.xml()));

        assertThat(byXml).isGreaterThan(3_000);
        assertThat(metres("county.osm.pbf", OsmPbf.of(MAP))).isEqualTo(byXml);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 20, 60, 200})
    void aPbfFileThatEndsEarlyIsNoMap(int bytes) {
        byte[] whole = OsmPbf.of(MAP);

        assertUnusable("county.osm.pbf", Arrays.copyOf(whole, Math.min(bytes, whole.length - 1)));
    }

    @Test
    void aPbfFileThatWasChangedIsNoMap() {
        byte[] whole = OsmPbf.of(MAP);
        Arrays.fill(whole, 60, 100, (byte) 0xEE);

        assertUnusable("county.osm.pbf", whole);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "roads",
                "<html/>",
                "<osm version='0.6'></osm>",
                "<osm version='0.6'><node id='1' lat='41' lon='-97'/>",
                "<osm version='0.6'><node id='one' lat='41' lon='-97'/></osm>",
                "<?xml version='1.0'?><!DOCTYPE osm [<!ENTITY a 'aaaa'>]><osm version='0.6'>&a;</osm>",
                "<!-- a --><!DOCTYPE osm SYSTEM 'file:///etc/passwd'><osm version='0.6'></osm>",
            })
    void whatIsNoMapIsSaidSo(String text) {
        assertUnusable("county.osm", xml(text));
    }

    @Test
    void entitiesAreNotTakenFromOtherFiles() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret"), "<node id='9' lat='41' lon='-97'/>");
        String xml = MAP.xml().replace("<osm", "<!DOCTYPE osm [<!ENTITY x SYSTEM '" + secret.toUri() + "'>]><osm");

        assertUnusable("county.osm", xml(xml.replace("</osm>", "&x;</osm>")));
    }

    @Test
    void aNameSaysWhatAFileHolds() {
        assertThatThrownBy(() -> answer("county.zip", xml(MAP.xml())))
                .isInstanceOf(UnusableMap.class)
                .hasMessage("is neither .osm nor .osm.pbf");
        assertUnusable("county.osm", OsmPbf.of(MAP));
        assertUnusable("county.pbf", xml(MAP.xml()));
    }

    private void assertUnusable(String name, byte[] content) {
        assertThatThrownBy(() -> answer(name, content))
                .isInstanceOf(UnusableMap.class)
                .hasMessage("cannot be read as a map of OpenStreetMap");
        assertThat(left()).as("nothing half made is kept").isEmpty();
    }

    private List<Path> left() {
        Path maps = folder.resolve("roads-measured").resolve("maps");
        try (Stream<Path> files = Files.walk(maps)) {
            return files.filter(file -> !file.equals(maps)).toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
