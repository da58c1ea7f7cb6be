package freshfurrow.model.read;

import freshfurrow.model.read.tree.Place;
import freshfurrow.model.season.GeoPoint;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The one name space of fields, places and water points, and where on earth each of them is. */
final class Places {
    private final Problems problems;
    private final boolean pointsNeeded;
    private final Map<String, Place> declared = new LinkedHashMap<>();
    private final Map<String, GeoPoint> points = new LinkedHashMap<>();

    /** @param pointsNeeded whether distances are measured between points rather than given */
    Places(Problems problems, boolean pointsNeeded) {
        this.problems = problems;
        this.pointsNeeded = pointsNeeded;
    }

    void declare(String id, Place at) {
        Place before = declared.putIfAbsent(id, at);
        if (before != null) {
            String where = before.file() + (before.line() > 0 ? ":" + before.line() : "");
            problems.add(
                    at,
                    "the id " + id + " is taken by " + where + " already",
                    "give fields, places and water points ids of their own");
        }
    }

    /** Takes lat and lon of a thing of that id. */
    void point(String id, Keys keys) {
        declare(id, keys.place());
        boolean any = keys.has("lat") || keys.has("lon");
        if (!any && !pointsNeeded) {
            return;
        }
        keys.needed("lat", "write degrees north, like lat: 41.0");
        keys.needed("lon", "write degrees east, negative in the west, like lon: -97.0");
        Optional<Double> lon = keys.number("lon", new Range(-180, 180, "degrees from -180 to 180", "-97.0"));
        boolean lonCouldBeLat = lon.isPresent() && Math.abs(lon.get()) <= 90;
        String latitudes = "degrees from -90 to 90" + (lonCouldBeLat ? "; maybe lat and lon are swapped" : "");
        Optional<Double> lat = keys.number("lat", new Range(-90, 90, latitudes, "41.0"));
        if (lat.isPresent() && lon.isPresent()) {
            points.put(id, new GeoPoint(lat.get(), lon.get()));
        }
    }

    void put(String id, GeoPoint point) {
        points.put(id, point);
    }

    Optional<GeoPoint> at(String id) {
        return Optional.ofNullable(points.get(id));
    }

    /** Where the file says that there is a place of that id. */
    Place declaredAt(String id) {
        return Objects.requireNonNull(declared.get(id));
    }

    Collection<String> ids() {
        return declared.keySet();
    }

    Map<String, GeoPoint> points() {
        return points;
    }

    boolean pointsNeeded() {
        return pointsNeeded;
    }
}
