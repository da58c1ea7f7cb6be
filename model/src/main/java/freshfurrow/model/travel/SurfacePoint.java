package freshfurrow.model.travel;

import freshfurrow.model.season.GeoPoint;

/**
 * A point on the WGS84 ellipsoid, also in space, m from the earth's centre. What the straight line through the earth says of the way over
 * it takes a hundredth of the time of a geodesic.
 */
record SurfacePoint(GeoPoint geo, double x, double y, double z) {
    private static final double EQUATORIAL_RADIUS_M = 6_378_137;
    private static final double FLATTENING = 1 / 298.257223563;

    /** Of a meridian at the equator: nowhere does the ellipsoid curve more. */
    private static final double LEAST_RADIUS_M = EQUATORIAL_RADIUS_M * (1 - FLATTENING) * (1 - FLATTENING);

    /** At the poles: nowhere does it curve less. */
    private static final double LARGEST_RADIUS_M = EQUATORIAL_RADIUS_M / (1 - FLATTENING);

    /** Far more than rounding and the geodesic's turning out of its plane come to. */
    private static final double MARGIN_M = 1e-5;

    private static final double LONGEST_CHORD_M = 500_000;

    static SurfacePoint of(GeoPoint geo) {
        double lat = Math.toRadians(geo.lat());
        double lon = Math.toRadians(geo.lon());
        double eccentricity2 = FLATTENING * (2 - FLATTENING);
        double toAxisM = EQUATORIAL_RADIUS_M / Math.sqrt(1 - eccentricity2 * Math.sin(lat) * Math.sin(lat));
        return new SurfacePoint(
                geo,
                toAxisM * Math.cos(lat) * Math.cos(lon),
                toAxisM * Math.cos(lat) * Math.sin(lon),
                toAxisM * (1 - eccentricity2) * Math.sin(lat));
    }

    /** Whether {@link #atLeastM} and {@link #atMostM} are close to the geodesic: within a metre. */
    boolean isNear(SurfacePoint other) {
        return chordM(other) <= LONGEST_CHORD_M;
    }

    /** The geodesic is no shorter, m: the arc over the same chord of the widest circle by which the ellipsoid curves. */
    double atLeastM(SurfacePoint other) {
        return arcM(chordM(other), LARGEST_RADIUS_M) - MARGIN_M;
    }

    /** A near geodesic is no longer, m: the arc over the same chord of the narrowest circle (Schur's comparison theorem). */
    double atMostM(SurfacePoint other) {
        return arcM(chordM(other), LEAST_RADIUS_M) + MARGIN_M;
    }

    private double chordM(SurfacePoint other) {
        double dx = x - other.x;
        double dy = y - other.y;
        double dz = z - other.z;
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** By the series of the arc sine, of which the next term is below 1e-6 m at the longest chord. */
    private static double arcM(double chordM, double radiusM) {
        double half = chordM / (2 * radiusM);
        double half2 = half * half;
        return chordM * (1 + half2 * (1.0 / 6 + half2 * (3.0 / 40 + half2 * (15.0 / 336))));
    }
}
