package freshfurrow.app.begin;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The polygons of one placemark, as a GeoJSON geometry (RFC 7946): the outer ring of each first, then its inner ones; heights left out. */
final class KmlPolygons {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,2})?");

    private final List<ArrayNode> polygons = new ArrayList<>();
    private boolean isOfPolygon;
    private boolean isInner;

    void begin() {
        polygons.add(NODES.arrayNode());
        isOfPolygon = false;
    }

    void outer() {
        isOfPolygon = true;
        isInner = false;
    }

    void inner() {
        isOfPolygon = true;
        isInner = true;
    }

    /**
     * A list of longitude, latitude and maybe height, if it is of a polygon; those of points and lines are passed over.
     *
     * @param name of the placemark
     */
    void ring(String coordinates, String name) throws UnusableMap {
        if (!isOfPolygon || polygons.isEmpty()) {
            return;
        }
        isOfPolygon = false;
        ArrayNode ring = NODES.arrayNode();
        for (String tuple : coordinates.strip().split("\\s+", -1)) {
            String[] numbers = tuple.split(",", -1);
            if (numbers.length < 2 || numbers.length > 3 || !isNumber(numbers[0]) || !isNumber(numbers[1])) {
                throw new UnusableMap("'" + (tuple.length() > 40 ? tuple.substring(0, 40) + "…" : tuple)
                        + "' in the polygon of " + (name.isEmpty() ? "a placemark without a name" : name)
                        + " is no longitude,latitude in degrees.");
            }
            ring.addArray().add(Double.parseDouble(numbers[0])).add(Double.parseDouble(numbers[1]));
        }
        ArrayNode polygon = polygons.get(polygons.size() - 1);
        if (isInner) {
            polygon.add(ring);
        } else {
            polygon.insert(0, ring);
        }
    }

    private static boolean isNumber(String text) {
        return NUMBER.matcher(text).matches();
    }

    /** Empty where there is none. */
    Optional<JsonNode> geometry() {
        List<ArrayNode> drawn =
                polygons.stream().filter(polygon -> !polygon.isEmpty()).toList();
        if (drawn.isEmpty()) {
            return Optional.empty();
        }
        ObjectNode geometry = NODES.objectNode();
        if (drawn.size() == 1) {
            geometry.put("type", "Polygon").set("coordinates", drawn.get(0));
        } else {
            geometry.put("type", "MultiPolygon").putArray("coordinates").addAll(drawn);
        }
        return Optional.of(geometry);
    }
}
