package freshfurrow.desk.begin;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import freshfurrow.app.begin.FieldRow;
import freshfurrow.desk.server.Json;
import java.util.ArrayList;
import java.util.List;

/** Fields as pages have them. */
final class FieldsData {
    private FieldsData() {}

    static ArrayNode of(List<FieldRow> rows) {
        ArrayNode fields = JsonNodeFactory.instance.arrayNode();
        rows.forEach(row -> fields.addObject()
                .put("id", row.id())
                .put("name", row.name())
                .put("area", row.area())
                .put("lat", row.lat())
                .put("lon", row.lon())
                .put("crop", row.crop())
                .put("drainage", row.drainage()));
        return fields;
    }

    static List<FieldRow> read(JsonNode fields) {
        List<FieldRow> rows = new ArrayList<>();
        fields.forEach(field -> rows.add(new FieldRow(
                text(field, "id"),
                text(field, "name"),
                text(field, "area"),
                text(field, "lat"),
                text(field, "lon"),
                text(field, "crop"),
                text(field, "drainage"))));
        return rows;
    }

    private static String text(JsonNode field, String key) {
        return Json.text(field, key).orElse("");
    }
}
