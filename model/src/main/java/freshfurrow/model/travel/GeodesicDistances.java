package freshfurrow.model.travel;

import freshfurrow.model.season.Distances;
import freshfurrow.model.season.GeoPoint;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import org.jspecify.annotations.Nullable;

/**
 * The geodesic distance on the WGS84 ellipsoid times a road factor (Karney 2013, Algorithms for geodesics, as computed by
 * GeographicLib).
 */
public final class GeodesicDistances implements Distances {
    private final Map<String, SurfacePoint> points;
    private final double roadFactor;

    /**
     * Distances between points.
     *
     * @param points by id
     * @param roadFactor road distance over straight distance, 1 or more
     */
    public GeodesicDistances(Map<String, GeoPoint> points, double roadFactor) {
        if (!(roadFactor >= 1)) {
            throw new IllegalArgumentException(
                    "a road is no shorter than the straight line: road factor " + roadFactor);
        }
        this.points = points.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, point -> SurfacePoint.of(point.getValue())));
        this.roadFactor = roadFactor;
    }

    @Override
    public double metres(String from, String to) {
        return metres(point(from), point(to));
    }

    @Override
    public double atLeast(String from, String to) {
        SurfacePoint a = point(from);
        SurfacePoint b = point(to);
        return a.isNear(b) ? Math.max(0, a.atLeastM(b)) * roadFactor : metres(a, b);
    }

    @Override
    public double atMost(String from, String to) {
        SurfacePoint a = point(from);
        SurfacePoint b = point(to);
        return a.isNear(b) ? a.atMostM(b) * roadFactor : metres(a, b);
    }

    private double metres(SurfacePoint from, SurfacePoint to) {
        GeoPoint a = from.geo();
        GeoPoint b = to.geo();
        return Geodesic.WGS84.Inverse(a.lat(), a.lon(), b.lat(), b.lon(), GeodesicMask.DISTANCE).s12 * roadFactor;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GeodesicDistances roads
                && points.equals(roads.points)
                && roadFactor == roads.roadFactor;
    }

    @Override
    public int hashCode() {
        return Objects.hash(points, roadFactor);
    }

    private SurfacePoint point(String id) {
        SurfacePoint point = points.get(id);
        if (point == null) {
            throw new IllegalArgumentException("no place " + id);
        }
        return point;
    }
}
