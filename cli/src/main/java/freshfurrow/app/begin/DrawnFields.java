package freshfurrow.app.begin;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Fields drawn on a map, as a GeoJSON (RFC 7946) or KML file of any program. */
public final class DrawnFields {
    private static final int DEEPEST = 50;
    private static final String ZIP = "PK\u0003\u0004";
    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .build())
                    .build())
            .build();

    private DrawnFields() {}

    /** Whether a text is meant to be a map, rather than a table. */
    public static boolean isMap(String text) {
        String begun = begun(text);
        return begun.startsWith("{") || begun.startsWith("<") || begun.startsWith(ZIP);
    }

    /**
     * The fields with their shapes.
     *
     * @throws UnusableMap when there are none in it, or it cannot be read
     */
    public static GivenFields read(String text) throws UnusableMap {
        String begun = begun(text);
        if (begun.startsWith(ZIP)) {
            throw new UnusableMap("That is a zip, as KMZ files are. Unzip it, and take the KML file that is in it.");
        }
        return begun.startsWith("<") ? KmlFields.read(begun) : geoJson(begun);
    }

    private static String begun(String text) {
        return text.replace("\uFEFF", "").stripLeading();
    }

    private static GivenFields geoJson(String text) throws UnusableMap {
        JsonNode features;
        try {
            features = MAPPER.readTree(text).path("features");
        } catch (JsonProcessingException e) {
            throw noFields();
        }
        List<FieldRow> rows = new ArrayList<>();
        List<JsonNode> shapes = new ArrayList<>();
        for (JsonNode feature : features) {
            rows.add(row(feature));
            shapes.add(feature.path("geometry").isObject() ? feature.path("geometry") : MAPPER.nullNode());
        }
        if (rows.isEmpty()) {
            throw noFields();
        }
        return new GivenFields(rows, Optional.of(shapes));
    }

    private static UnusableMap noFields() {
        return new UnusableMap("That is not a GeoJSON FeatureCollection with fields in it.");
    }

    private static FieldRow row(JsonNode feature) {
        String id = property(feature, Heading.ID);
        return new FieldRow(
                id.isEmpty() ? feature.path("id").asText("") : id,
                property(feature, Heading.NAME),
                "",
                "",
                "",
                property(feature, Heading.CROP),
                property(feature, Heading.DRAINAGE));
    }

    private static String property(JsonNode feature, Heading heading) {
        for (var property : feature.path("properties").properties()) {
            if (Heading.guess(property.getKey()).filter(heading::equals).isPresent()) {
                return property.getValue().asText("").equals("null")
                        ? ""
                        : property.getValue().asText("");
            }
        }
        return "";
    }
}
