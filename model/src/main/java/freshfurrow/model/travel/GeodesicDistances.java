package freshfurrow.model.travel;

import freshfurrow.model.season.Distances;
import freshfurrow.model.season.GeoPoint;
import java.util.Map;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;

/**
 * The geodesic distance on the WGS84 ellipsoid times a road factor (Karney 2013, Algorithms for geodesics, as computed by
 * GeographicLib).
 *
 * @param points by id
 * @param roadFactor road distance over straight distance, 1 or more
 */
public record GeodesicDistances(Map<String, GeoPoint> points, double roadFactor) implements Distances {
    public GeodesicDistances {
        points = Map.copyOf(points);
        if (!(roadFactor >= 1)) {
            throw new IllegalArgumentException(
                    "a road is no shorter than the straight line: road factor " + roadFactor);
        }
    }

    @Override
    public double metres(String from, String to) {
        GeoPoint a = point(from);
        GeoPoint b = point(to);
        return Geodesic.WGS84.Inverse(a.lat(), a.lon(), b.lat(), b.lon(), GeodesicMask.DISTANCE).s12 * roadFactor;
    }

    private GeoPoint point(String id) {
        GeoPoint point = points.get(id);
        if (point == null) {
            throw new IllegalArgumentException("no place " + id);
        }
        return point;
    }
}
