package freshfurrow.model.read;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.read.FieldReader.FieldShape;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/**
 * Polygons of a field: their geodesic area on WGS84 (GeographicLib, Karney 2013), holes taken out, and a place to enter it.
 *
 * @param polygons each a list of closed rings, the outer one first
 */
record Outline(List<List<List<GeoPoint>>> polygons) {
    private static final GeometryFactory PLANE = new GeometryFactory();

    /** The shape; empty when a polygon crosses itself or has no area, which is a problem. */
    Optional<FieldShape> shape(Optional<GeoPoint> entrance, Place place, Problems problems) {
        Geometry plane = plane();
        TopologyValidationError error = new IsValidOp(plane).getValidationError();
        if (error != null) {
            Coordinate where = error.getCoordinate();
            problems.add(
                    place,
                    "the polygon is not valid near [" + where.x + ", " + where.y + "]: "
                            + error.getMessage().toLowerCase(Locale.ROOT),
                    "draw it again so that its rings do not cross or overlap");
            return Optional.empty();
        }
        double areaHa = Kind.AREA.toSi(areaM2(), "m2");
        if (!FieldReader.AREA.holds(areaHa)) {
            problems.add(
                    place,
                    String.format(Locale.ROOT, "the polygon has an area of %.4g ha", areaHa),
                    "draw the outline of a field of " + FieldReader.AREA.words());
            return Optional.empty();
        }
        Point inside = plane.getInteriorPoint();
        return Optional.of(
                new FieldShape(entrance.orElseGet(() -> new GeoPoint(inside.getY(), inside.getX())), rings(), areaHa));
    }

    /** Square metres on the ellipsoid, holes taken out. */
    double areaM2() {
        double area = 0;
        for (List<List<GeoPoint>> polygon : polygons) {
            area += ringM2(polygon.get(0));
            for (List<GeoPoint> hole : polygon.subList(1, polygon.size())) {
                area -= ringM2(hole);
            }
        }
        return area;
    }

    private static double ringM2(List<GeoPoint> ring) {
        PolygonArea area = new PolygonArea(Geodesic.WGS84, false);
        ring.subList(0, ring.size() - 1).forEach(point -> area.AddPoint(point.lat(), point.lon()));
        return Math.abs(area.Compute().area);
    }

    private List<List<GeoPoint>> rings() {
        List<List<GeoPoint>> rings = new ArrayList<>();
        polygons.forEach(rings::addAll);
        return rings;
    }

    private Geometry plane() {
        return PLANE.createMultiPolygon(polygons.stream().map(Outline::plane).toArray(Polygon[]::new));
    }

    private static Polygon plane(List<List<GeoPoint>> polygon) {
        LinearRing[] rings = polygon.stream()
                .map(ring -> PLANE.createLinearRing(ring.stream()
                        .map(point -> new Coordinate(point.lon(), point.lat()))
                        .toArray(Coordinate[]::new)))
                .toArray(LinearRing[]::new);
        LinearRing[] holes = new LinearRing[rings.length - 1];
        System.arraycopy(rings, 1, holes, 0, holes.length);
        return PLANE.createPolygon(rings[0], holes);
    }
}
