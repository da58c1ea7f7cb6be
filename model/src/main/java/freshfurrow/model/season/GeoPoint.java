package freshfurrow.model.season;

/**
 * A point on the WGS84 ellipsoid.
 *
 * @param lat degrees, -90 to 90, north positive
 * @param lon degrees, -180 to 180, east positive
 */
public record GeoPoint(double lat, double lon) {
    public GeoPoint {
        if (!(lat >= -90 && lat <= 90 && lon >= -180 && lon <= 180)) {
            throw new IllegalArgumentException("no such point: lat " + lat + ", lon " + lon);
        }
    }
}
