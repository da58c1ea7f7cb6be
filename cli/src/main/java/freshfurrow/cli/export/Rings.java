package freshfurrow.cli.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Outlines of fields as polygons of GeoJSON (RFC 7946, section 3.1.6): each an outer ring, which runs counterclockwise, and
 * its holes, which run clockwise.
 */
final class Rings {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final GeometryFactory PLANE = new GeometryFactory();

    private Rings() {}

    /**
     * A Polygon, or a MultiPolygon where there are several.
     *
     * @param outline closed rings, those of a polygon one after the other and its outer one first
     */
    static ObjectNode geometry(List<List<GeoPoint>> outline) {
        List<ArrayNode> polygons =
                polygons(outline).stream().map(Rings::coordinates).toList();
        ObjectNode geometry = JSON.objectNode();
        if (polygons.size() == 1) {
            geometry.put("type", "Polygon").set("coordinates", polygons.get(0));
        } else {
            ArrayNode all = geometry.put("type", "MultiPolygon").putArray("coordinates");
            polygons.forEach(all::add);
        }
        return geometry;
    }

    static ArrayNode position(GeoPoint point) {
        return JSON.arrayNode().add(point.lon()).add(point.lat());
    }

    /** A ring is a hole of the polygon before it when it lies within it and not within one of its holes. */
    private static List<List<Coordinate[]>> polygons(List<List<GeoPoint>> outline) {
        List<List<Coordinate[]>> polygons = new ArrayList<>();
        for (List<GeoPoint> points : outline) {
            Coordinate[] ring = points.stream()
                    .map(point -> new Coordinate(point.lon(), point.lat()))
                    .toArray(Coordinate[]::new);
            if (!polygons.isEmpty() && isHole(ring, polygons.get(polygons.size() - 1))) {
                polygons.get(polygons.size() - 1).add(ring);
            } else {
                List<Coordinate[]> polygon = new ArrayList<>();
                polygon.add(ring);
                polygons.add(polygon);
            }
        }
        return polygons;
    }

    private static boolean isHole(Coordinate[] ring, List<Coordinate[]> polygon) {
        Polygon inner = PLANE.createPolygon(ring);
        return PLANE.createPolygon(polygon.get(0)).covers(inner)
                && polygon.stream().skip(1).noneMatch(hole -> PLANE.createPolygon(hole)
                        .covers(inner));
    }

    private static ArrayNode coordinates(List<Coordinate[]> polygon) {
        ArrayNode rings = JSON.arrayNode();
        for (Coordinate[] ring : polygon) {
            boolean isOuter = rings.isEmpty();
            ArrayNode positions = rings.addArray();
            boolean keepsOrder = Orientation.isCCW(ring) == isOuter;
            for (int i = 0; i < ring.length; i++) {
                Coordinate point = ring[keepsOrder ? i : ring.length - 1 - i];
                positions.addArray().add(point.x).add(point.y);
            }
        }
        return rings;
    }
}
