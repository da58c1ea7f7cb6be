package freshfurrow.model.roads;

import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/** A line of points as text: latitude and longitude in hundred-thousandths of a degree, about a metre, each less that of the point before. */
final class PointLine {
    private static final double PER_DEGREE = 1e5;

    private PointLine() {}

    static String text(List<GeoPoint> points) {
        StringJoiner text = new StringJoiner(" ");
        long lat = 0;
        long lon = 0;
        for (GeoPoint point : points) {
            long nextLat = Math.round(point.lat() * PER_DEGREE);
            long nextLon = Math.round(point.lon() * PER_DEGREE);
            text.add(Long.toString(nextLat - lat)).add(Long.toString(nextLon - lon));
            lat = nextLat;
            lon = nextLon;
        }
        return text.toString();
    }

    /** @throws IllegalArgumentException when it is no such text */
    static List<GeoPoint> points(String text) {
        List<GeoPoint> points = new ArrayList<>();
        String[] steps = text.isEmpty() ? new String[0] : text.split(" ", -1);
        if (steps.length % 2 != 0) {
            throw new IllegalArgumentException(text);
        }
        long lat = 0;
        long lon = 0;
        for (int i = 0; i < steps.length; i += 2) {
            lat += Long.parseLong(steps[i]);
            lon += Long.parseLong(steps[i + 1]);
            points.add(new GeoPoint(lat / PER_DEGREE, lon / PER_DEGREE));
        }
        return points;
    }
}
