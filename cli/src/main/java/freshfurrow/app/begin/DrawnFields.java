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

/** Fields drawn on a map, as a GeoJSON file (RFC 7946) of any program. */
public final class DrawnFields {
    private static final int DEEPEST = 50;
    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .build())
                    .build())
            .build();

    private DrawnFields() {}

    /** Whether a text is meant to be GeoJSON, rather than a table. */
    public static boolean isMap(String text) {
        return text.replace("\uFEFF", "").stripLeading().startsWith("{");
    }

    /** The fields with their shapes; empty when the text is no FeatureCollection with a feature in it. */
    public static Optional<GivenFields> read(String text) {
        JsonNode features;
        try {
            features = MAPPER.readTree(text.replace("\uFEFF", "")).path("features");
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
        List<FieldRow> rows = new ArrayList<>();
        List<JsonNode> shapes = new ArrayList<>();
        for (JsonNode feature : features) {
            rows.add(row(feature));
            shapes.add(feature.path("geometry").isObject() ? feature.path("geometry") : MAPPER.nullNode());
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new GivenFields(rows, Optional.of(shapes)));
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
