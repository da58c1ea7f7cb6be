package freshfurrow.model.season;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every place of a season that a machine may stand at or go to, each once and by its position: fields first, then water points, then
 * all others, which share one name space. A place where a machine stands is one of them, whatever else the season says of it.
 */
public final class PlaceIndex {
    private final List<String> ids;
    private final Map<String, Integer> positions = new HashMap<>();
    private final Map<String, Optional<GeoPoint>> others = new LinkedHashMap<>();

    private PlaceIndex(Season season) {
        season.fields().forEach(field -> add(field.id()));
        season.waterPoints().forEach(point -> add(point.id()));
        season.places().forEach(this::other);
        season.machines().forEach(machine -> other(machine.at(), Optional.empty()));
        season.compost().forEach(lot -> lot.at().ifPresent(place -> other(place, Optional.empty())));
        season.standing().ifPresent(standing -> {
            standing.planters().values().forEach(planter -> other(planter.at(), Optional.empty()));
            standing.rigs().values().forEach(rig -> other(rig.at(), Optional.empty()));
        });
        List<String> inOrder = new ArrayList<>(positions.keySet());
        inOrder.sort((a, b) -> Integer.compare(positions.getOrDefault(a, 0), positions.getOrDefault(b, 0)));
        ids = List.copyOf(inOrder);
    }

    public static PlaceIndex of(Season season) {
        return new PlaceIndex(season);
    }

    private boolean add(String id) {
        return positions.putIfAbsent(id, positions.size()) == null;
    }

    private void other(String id, Optional<GeoPoint> at) {
        if (add(id)) {
            others.put(id, at);
        }
    }

    /** All ids in the order of their positions. */
    public List<String> ids() {
        return ids;
    }

    /** Places that are neither fields nor water points, in the order of their positions, and where they are, where known. */
    public Map<String, Optional<GeoPoint>> others() {
        return Collections.unmodifiableMap(others);
    }

    public boolean contains(String id) {
        return positions.containsKey(id);
    }

    /**
     * The position of a place, 0 or more.
     *
     * @throws IllegalArgumentException when the season has no such place
     */
    public int positionOf(String id) {
        Integer position = positions.get(id);
        if (position == null) {
            throw new IllegalArgumentException("the season has no place " + id);
        }
        return position;
    }
}
