package freshfurrow.model.read;

import freshfurrow.model.read.FieldReader.FieldShape;
import freshfurrow.model.read.FieldReader.FieldSource;
import freshfurrow.model.read.tree.Node;
import freshfurrow.model.read.tree.Place;
import freshfurrow.model.season.GeoPoint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Fields as polygons in a GeoJSON file (RFC 7946): a FeatureCollection of Polygons and MultiPolygons, longitude first. */
final class GeoJsonFields {
    private static final Set<String> IGNORED = Set.of("lat", "lon");

    private final Problems problems;

    GeoJsonFields(Problems problems) {
        this.problems = problems;
    }

    List<FieldSource> read(Node root) {
        List<FieldSource> sources = new ArrayList<>();
        if (!(root instanceof Node.Mapping collection)
                || !text(collection, "type").equals("FeatureCollection")
                || !(collection.entries().get("features") instanceof Node.Sequence features)) {
            problems.add(
                    root.place(),
                    "is not a GeoJSON FeatureCollection",
                    "write {\"type\": \"FeatureCollection\", \"features\": […]}");
            return sources;
        }
        for (Node feature : features.items()) {
            if (feature instanceof Node.Mapping mapping && text(mapping, "type").equals("Feature")) {
                feature(mapping).ifPresent(sources::add);
            } else {
                problems.add(feature.place(), "is not a GeoJSON Feature", "write {\"type\": \"Feature\", …}");
            }
        }
        return sources;
    }

    private Optional<FieldSource> feature(Node.Mapping feature) {
        Map<String, Node> properties = feature.entries().get("properties") instanceof Node.Mapping mapping
                ? new LinkedHashMap<>(mapping.entries())
                : new LinkedHashMap<>();
        Node id = properties.containsKey("id")
                ? properties.remove("id")
                : feature.entries().get("id");
        if (!(id instanceof Node.Text name)) {
            problems.add(feature.place(), "the field has no id", "give it a property \"id\"");
            return Optional.empty();
        }
        Keys.checkId(name.text(), name.place(), problems);
        Place place = new Place(feature.place().file(), feature.place().line(), name.text());
        Optional<GeoPoint> entrance =
                Optional.ofNullable(properties.remove("entrance")).flatMap(node -> GeoJsonPoints.point(node, problems));
        properties.keySet().removeAll(IGNORED);
        Optional<FieldShape> shape =
                rings(feature, place).flatMap(polygons -> new Outline(polygons).shape(entrance, place, problems));
        return shape.map(
                drawn -> new FieldSource(name.text(), new Node.Mapping(place, properties), Optional.of(drawn)));
    }

    private Optional<List<List<List<GeoPoint>>>> rings(Node.Mapping feature, Place place) {
        Node geometry = feature.entries().getOrDefault("geometry", new Node.Nothing(place));
        int before = problems.count();
        Optional<List<List<List<GeoPoint>>>> polygons = geometry(geometry, problems);
        if (polygons.isEmpty() && problems.count() == before) {
            problems.add(place, "has no polygon", "give the feature a geometry of type Polygon or MultiPolygon");
        }
        return polygons;
    }

    /** The polygons of a geometry, each a list of rings; empty when it is of another type, or wrong, which is a problem. */
    static Optional<List<List<List<GeoPoint>>>> geometry(Node node, Problems problems) {
        if (node instanceof Node.Mapping geometry
                && geometry.entries().get("coordinates") instanceof Node.Sequence coordinates) {
            String type = text(geometry, "type");
            if (type.equals("Polygon")) {
                return GeoJsonPoints.polygon(coordinates, problems).map(List::of);
            }
            if (type.equals("MultiPolygon")) {
                List<List<List<GeoPoint>>> polygons = new ArrayList<>();
                for (Node polygon : coordinates.items()) {
                    Optional<List<List<GeoPoint>>> rings = GeoJsonPoints.polygon(polygon, problems);
                    if (rings.isEmpty()) {
                        return Optional.empty();
                    }
                    polygons.add(rings.get());
                }
                if (!polygons.isEmpty()) {
                    return Optional.of(polygons);
                }
            }
        }
        return Optional.empty();
    }

    private static String text(Node.Mapping mapping, String key) {
        return mapping.entries().get(key) instanceof Node.Text text ? text.text() : "";
    }
}
