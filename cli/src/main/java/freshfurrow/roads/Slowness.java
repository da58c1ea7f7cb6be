package freshfurrow.roads;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * As how many metres a metre of a way counts when ways are compared: more where ground is slow, and where farm machines are not meant to
 * pass through. All figures are ours, no source. They choose a way; its length is what is driven.
 */
final class Slowness {
    private static final double FIRM_TRACK = 1.2;
    private static final double LOOSE = 1.2;
    private static final double EARTH = 1.5;
    private static final double SOFT = 3;

    /** Fast traffic is left to itself where there is another way. */
    private static final double TRUNK = 1.5;

    private static final double ONLY_TO_GET_THERE = 2;

    private static final Map<String, Double> BY_SURFACE = Map.ofEntries(
            entry("unpaved", LOOSE),
            entry("compacted", LOOSE),
            entry("fine_gravel", LOOSE),
            entry("gravel", LOOSE),
            entry("pebblestone", LOOSE),
            entry("rock", EARTH),
            entry("ground", EARTH),
            entry("dirt", EARTH),
            entry("earth", EARTH),
            entry("grass", EARTH),
            entry("grass_paver", LOOSE),
            entry("clay", EARTH),
            entry("mud", SOFT),
            entry("sand", SOFT));

    private static final Map<String, Double> BY_TRACK =
            Map.of("grade1", 1.0, "grade2", FIRM_TRACK, "grade3", EARTH, "grade4", 2.0, "grade5", SOFT);

    private Slowness() {}

    /** By the tags of a way; 1 to 9. */
    static double of(UnaryOperator<@Nullable String> tags) {
        String highway = tag(tags, "highway");
        double ground = BY_SURFACE.getOrDefault(tag(tags, "surface"), 1.0);
        if (highway.equals("track")) {
            double track = BY_TRACK.getOrDefault(
                    tag(tags, "tracktype"), tag(tags, "surface").isEmpty() ? EARTH : 1.0);
            ground = Math.max(ground, track);
        }
        double traffic = highway.startsWith("trunk") ? TRUNK : 1;
        return ground * traffic * (FarmAccess.isOnlyToGetThere(tags) ? ONLY_TO_GET_THERE : 1);
    }

    private static String tag(UnaryOperator<@Nullable String> tags, String key) {
        String value = tags.apply(key);
        return value == null ? "" : value;
    }
}
