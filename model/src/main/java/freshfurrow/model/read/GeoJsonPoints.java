package freshfurrow.model.read;

import freshfurrow.model.quantity.WrittenQuantity;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Positions and rings of GeoJSON: [longitude, latitude], RFC 7946 sections 3.1.1 and 3.1.6. */
final class GeoJsonPoints {
    private static final int FEWEST_POSITIONS = 4;

    private GeoJsonPoints() {}

    static Optional<GeoPoint> point(Node node, Problems problems) {
        String remedy = "write [longitude, latitude] in degrees, like [-97.0, 41.0]";
        if (node instanceof Node.Sequence position && position.items().size() >= 2) {
            Optional<Double> lon = degrees(position.items().get(0));
            Optional<Double> lat = degrees(position.items().get(1));
            if (lon.isPresent() && lat.isPresent()) {
                if (Math.abs(lat.get()) <= 90 && Math.abs(lon.get()) <= 180) {
                    return Optional.of(new GeoPoint(lat.get(), lon.get()));
                }
                boolean swapped = Math.abs(lat.get()) <= 180 && Math.abs(lon.get()) <= 90;
                problems.add(
                        node.place(),
                        "[" + lon.get() + ", " + lat.get() + "] is not on the earth"
                                + (swapped ? ", or latitude comes first" : ""),
                        remedy);
                return Optional.empty();
            }
        }
        problems.add(node.place(), "is not a position", remedy);
        return Optional.empty();
    }

    /** The rings of a polygon, the outer one first; empty when one of them is wrong, which is a problem. */
    static Optional<List<List<GeoPoint>>> polygon(Node node, Problems problems) {
        if (!(node instanceof Node.Sequence rings) || rings.items().isEmpty()) {
            problems.add(node.place(), "is not a polygon", "write a list of rings, each a list of positions");
            return Optional.empty();
        }
        List<List<GeoPoint>> polygon = new ArrayList<>();
        for (Node ring : rings.items()) {
            Optional<List<GeoPoint>> points = ring(ring, problems);
            if (points.isEmpty()) {
                return Optional.empty();
            }
            polygon.add(points.get());
        }
        return Optional.of(polygon);
    }

    private static Optional<List<GeoPoint>> ring(Node node, Problems problems) {
        if (!(node instanceof Node.Sequence positions)) {
            problems.add(node.place(), "is not a ring", "write a list of positions");
            return Optional.empty();
        }
        List<GeoPoint> points = new ArrayList<>();
        for (Node position : positions.items()) {
            Optional<GeoPoint> point = point(position, problems);
            if (point.isEmpty()) {
                return Optional.empty();
            }
            points.add(point.get());
        }
        if (points.size() < FEWEST_POSITIONS || !points.get(0).equals(points.get(points.size() - 1))) {
            problems.add(
                    node.place(),
                    "the ring is not closed",
                    "use four positions or more, the last the same as the first");
            return Optional.empty();
        }
        return Optional.of(points);
    }

    private static Optional<Double> degrees(Node node) {
        return node instanceof Node.Text text
                ? WrittenQuantity.parse(text.text())
                        .filter(written -> written.unit().isEmpty())
                        .map(WrittenQuantity::figure)
                : Optional.empty();
    }
}
