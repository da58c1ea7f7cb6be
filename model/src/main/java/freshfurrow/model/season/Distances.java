package freshfurrow.model.season;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Road distances between the ids of fields, places and water points; may be asked from several threads at once. */
@FunctionalInterface
public interface Distances {
    /**
     * Distance by road, m, 0 or more, the same in both directions, 0 from a place to itself.
     *
     * @throws IllegalArgumentException when an id is unknown or the pair has no distance
     */
    double metres(String from, String to);

    /** No more than {@link #metres}, where that can be told sooner. */
    default double atLeast(String from, String to) {
        return metres(from, to);
    }

    /** No less than {@link #metres}, where that can be told sooner. */
    default double atMost(String from, String to) {
        return metres(from, to);
    }

    /** Where the roads lead, to be drawn: the points of each way that is known; none where distances come from no map. */
    default Map<FromTo, List<GeoPoint>> ways(Set<FromTo> wanted) {
        return Map.of();
    }
}
