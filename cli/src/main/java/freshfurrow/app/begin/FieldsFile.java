package freshfurrow.app.begin;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.quantity.TypedQuantity;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The file of the fields: a table, or a map where fields were drawn.
 *
 * @param rows the fields as they stand in it
 */
record FieldsFile(String name, String text, List<FieldRow> rows) {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** @param rows with ids */
    static FieldsFile of(List<FieldRow> rows, Optional<List<JsonNode>> shapes, UnitSystem units) {
        return shapes.map(drawn -> new FieldsFile("fields.geojson", map(rows, drawn), rows))
                .orElseGet(() -> new FieldsFile("fields.csv", table(rows, units), rows));
    }

    private static String table(List<FieldRow> rows, UnitSystem units) {
        boolean drains = rows.stream().anyMatch(row -> !row.drainage().isBlank());
        StringBuilder text = new StringBuilder();
        CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            List<String> header =
                    new ArrayList<>(List.of("id", "name", "area (" + units.area() + ")", "lat", "lon", "crop"));
            if (drains) {
                header.add("drainage");
            }
            printer.printRecord(header);
            for (FieldRow row : rows) {
                List<String> cells = new ArrayList<>(List.of(
                        row.id(),
                        row.name(),
                        area(row.area(), units),
                        degrees(row.lat()),
                        degrees(row.lon()),
                        row.crop()));
                if (drains) {
                    cells.add(row.drainage());
                }
                printer.printRecord(cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String area(String typed, UnitSystem units) {
        String unit = " " + units.area();
        return TypedQuantity.asWritten(
                        typed.replaceFirst("^(\\d+),(\\d{1,2})(?!\\d)", "$1.$2"), Kind.AREA, units.area())
                .map(area -> area.endsWith(unit) ? area.substring(0, area.length() - unit.length()) : area)
                .orElse(typed);
    }

    /** No degrees have thousands. */
    private static String degrees(String typed) {
        return typed.strip().replaceFirst("^([+-]?\\d{1,3}),(\\d+)$", "$1.$2");
    }

    static String map(List<FieldRow> rows, List<JsonNode> shapes) {
        ObjectNode collection = JsonNodeFactory.instance.objectNode().put("type", "FeatureCollection");
        var features = collection.putArray("features");
        for (int i = 0; i < rows.size(); i++) {
            FieldRow row = rows.get(i);
            ObjectNode feature = features.addObject().put("type", "Feature");
            ObjectNode properties = feature.putObject("properties").put("id", row.id());
            put(properties, "name", row.name());
            put(properties, "crop", row.crop());
            put(properties, "drainage", row.drainage());
            feature.set("geometry", shapes.get(i));
        }
        try {
            return MAPPER.writeValueAsString(collection).replace("{\"type\":\"Feature\"", "\n{\"type\":\"Feature\"")
                    + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void put(ObjectNode properties, String key, String value) {
        if (!value.isBlank()) {
            properties.put(key, value);
        }
    }
}
