package freshfurrow.app.shapefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateArrays;
import org.locationtech.jts.geom.Location;

/** Rings of a shapefile as a GeoJSON geometry (RFC 7946): clockwise ones are outer rings, the others holes in one of those. */
final class RingGeometry {
    private static final double PER_DEGREE = 1e7;

    private RingGeometry() {}

    static JsonNode of(List<Coordinate[]> rings, JsonNodeFactory nodes) {
        List<Coordinate[]> outer = new ArrayList<>();
        List<Coordinate[]> holes = new ArrayList<>();
        rings.forEach(ring -> (Orientation.isCCW(ring) ? holes : outer).add(ring));
        if (outer.isEmpty()) {
            outer.addAll(holes); // drawn the wrong way around, as some programs do
            holes.clear();
        }
        List<ArrayNode> polygons = new ArrayList<>();
        outer.forEach(ring -> polygons.add(nodes.arrayNode().add(node(ring, true, nodes))));
        for (Coordinate[] hole : holes) {
            for (int i = 0; i < outer.size(); i++) {
                if (isIn(hole, outer.get(i))) {
                    polygons.get(i).add(node(hole, false, nodes));
                    break;
                }
            }
        }
        ObjectNode geometry = nodes.objectNode();
        if (polygons.size() == 1) {
            geometry.put("type", "Polygon").set("coordinates", polygons.get(0));
        } else {
            geometry.put("type", "MultiPolygon").putArray("coordinates").addAll(polygons);
        }
        return geometry;
    }

    private static boolean isIn(Coordinate[] hole, Coordinate[] outer) {
        for (Coordinate point : hole) {
            int where = PointLocation.locateInRing(point, outer);
            if (where != Location.BOUNDARY) {
                return where == Location.INTERIOR;
            }
        }
        return true;
    }

    private static ArrayNode node(Coordinate[] ring, boolean isOuter, JsonNodeFactory nodes) {
        Coordinate[] ordered = CoordinateArrays.copyDeep(ring);
        if (Orientation.isCCW(ordered) != isOuter) {
            CoordinateArrays.reverse(ordered);
        }
        ArrayNode points = nodes.arrayNode();
        for (Coordinate point : ordered) {
            points.addArray().add(rounded(point.x)).add(rounded(point.y));
        }
        return points;
    }

    private static double rounded(double degrees) {
        return Math.round(degrees * PER_DEGREE) / PER_DEGREE;
    }
}
