package freshfurrow.roads;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Who may use a way, as it concerns farm machines. */
final class FarmAccess {
    private static final Set<String> ROADS = Set.of(
            "trunk",
            "trunk_link",
            "primary",
            "primary_link",
            "secondary",
            "secondary_link",
            "tertiary",
            "tertiary_link",
            "unclassified",
            "residential",
            "living_street",
            "service",
            "road",
            "track");

    /** What says it of farm machines, and where nothing does, what says it of more. */
    private static final List<String> KEYS = List.of("agricultural", "motor_vehicle", "vehicle", "access");

    private static final Set<String> CLOSED =
            Set.of("no", "military", "emergency", "forestry", "permit", "psv", "use_sidepath");

    /** For those who have some business there, as growers have. */
    private static final Set<String> ONLY_TO_GET_THERE =
            Set.of("private", "destination", "customers", "delivery", "discouraged");

    /** Gates and cattle grids are passed. */
    private static final Set<String> BARRIERS = Set.of(
            "block",
            "bollard",
            "bus_trap",
            "chain",
            "cycle_barrier",
            "debris",
            "fence",
            "hedge",
            "jersey_barrier",
            "kerb",
            "kissing_gate",
            "log",
            "motorcycle_barrier",
            "planter",
            "rope",
            "spikes",
            "stile",
            "sump_buster",
            "turnstile",
            "wall",
            "wicket_gate");

    private FarmAccess() {}

    /** By the tags of a way: motorways are closed, and so are fords, for loaded tanks. */
    static boolean isOpen(UnaryOperator<@Nullable String> tags) {
        boolean road =
                ROADS.contains(tag(tags, "highway")) && !tag(tags, "service").equals("emergency_access");
        boolean motorroad = tag(tags, "motorroad").equals("yes") && !said(tags).equals(Optional.of("yes"));
        return road && !motorroad && !isFord(tags) && !isClosed(tags);
    }

    /** By the tags of a point on a way. */
    static boolean isBarrier(UnaryOperator<@Nullable String> tags) {
        boolean let = said(tags).isPresent() && !isClosed(tags);
        return isClosed(tags) || isFord(tags) || (BARRIERS.contains(tag(tags, "barrier")) && !let);
    }

    /** Whether a way is for getting to places on it, and not for passing through. */
    static boolean isOnlyToGetThere(UnaryOperator<@Nullable String> tags) {
        return said(tags).filter(ONLY_TO_GET_THERE::contains).isPresent();
    }

    /** Of several values, like agricultural;forestry, one that lets farm machines in is enough. */
    private static boolean isClosed(UnaryOperator<@Nullable String> tags) {
        return said(tags)
                .filter(said ->
                        Stream.of(said.split(";", -1)).map(String::strip).allMatch(CLOSED::contains))
                .isPresent();
    }

    private static Optional<String> said(UnaryOperator<@Nullable String> tags) {
        return KEYS.stream()
                .map(key -> tag(tags, key))
                .filter(value -> !value.isEmpty())
                .findFirst();
    }

    private static boolean isFord(UnaryOperator<@Nullable String> tags) {
        String ford = tag(tags, "ford");
        return !ford.isEmpty() && !ford.equals("no");
    }

    private static String tag(UnaryOperator<@Nullable String> tags, String key) {
        String value = tags.apply(key);
        return value == null ? "" : value;
    }
}
