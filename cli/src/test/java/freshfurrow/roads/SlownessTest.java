package freshfurrow.roads;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All figures are ours, no source. */
class SlownessTest {
    @ParameterizedTest
    @CsvSource({
        "highway=tertiary, 1",
        "highway=tertiary surface=asphalt, 1",
        "highway=unclassified surface=gravel, 1.2",
        "highway=unclassified surface=dirt, 1.5",
        "highway=track, 1.5",
        "highway=track surface=gravel, 1.2",
        "highway=track tracktype=grade1, 1",
        "highway=track tracktype=grade4, 2",
        "highway=track tracktype=grade2 surface=mud, 3",
        "highway=trunk, 1.5",
        "highway=service access=private, 2",
        "highway=service motor_vehicle=destination agricultural=yes, 1",
        "highway=track tracktype=grade5 access=private, 6"
    })
    void slowGroundAndRoadsOfOthersCountMore(String tags, double metres) {
        Map<String, String> byKey = new HashMap<>();
        for (String tag : tags.split(" ", -1)) {
            byKey.put(tag.split("=", -1)[0], tag.split("=", -1)[1]);
        }

        assertThat(Slowness.of(byKey::get)).isEqualTo(metres);
    }
}
