package freshfurrow.model.season;

/** Road distances between the ids of fields, places and water points; may be asked from several threads at once. */
@FunctionalInterface
public interface Distances {
    /**
     * Distance by road, m, 0 or more, the same in both directions, 0 from a place to itself.
     *
     * @throws IllegalArgumentException when an id is unknown or the pair has no distance
     */
    double metres(String from, String to);
}
