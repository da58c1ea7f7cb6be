package freshfurrow.desk.season;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Unanswered;
import freshfurrow.model.edit.Edit;
import freshfurrow.model.edit.Value;
import freshfurrow.model.quantity.TypedQuantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Edits as a form sends them, with quantities written as the season file has them. */
final class TypedEdits {
    private static final int LONGEST_TEXT = 10_000;

    private final SeasonSchema schema;
    private final UsualUnits usual;

    TypedEdits(SeasonSchema schema, UsualUnits usual) {
        this.schema = schema;
        this.usual = usual;
    }

    List<Edit> of(JsonNode edits) {
        List<Edit> all = new ArrayList<>();
        edits.forEach(edit -> all.add(one(edit)));
        return all;
    }

    private Edit one(JsonNode edit) {
        List<String> path = Json.texts(edit, "path");
        JsonNode value = edit.path("value");
        return switch (Json.needed(edit, "do")) {
            case "set" -> new Edit.Set(path, value(path, value));
            case "append" -> new Edit.Append(path, value(under(path, "1"), value));
            case "remove" -> new Edit.Remove(path);
            default -> throw Unanswered.senseless("There is no such edit.");
        };
    }

    private Value value(List<String> path, JsonNode value) {
        if (value.isTextual()) {
            return Value.of(written(path, value.textValue()));
        }
        if (value.isArray()) {
            List<Value> items = new ArrayList<>();
            value.forEach(item -> items.add(value(under(path, "1"), item)));
            return new Value.Items(items);
        }
        if (value.isObject()) {
            Map<String, Value> entries = new LinkedHashMap<>();
            value.properties()
                    .forEach(
                            entry -> entries.put(entry.getKey(), value(under(path, entry.getKey()), entry.getValue())));
            return new Value.Entries(entries);
        }
        throw Unanswered.senseless("A value is a text, a list or a map.");
    }

    /** What is no quantity, or not understood as one, stays as it was typed: who reads the season says what is wrong with it. */
    private String written(List<String> path, String typed) {
        if (typed.length() > LONGEST_TEXT) {
            throw new Unanswered(413, "The text is too long.");
        }
        return schema.kindAt(path)
                .flatMap(kind -> TypedQuantity.asWritten(
                        typed, kind, schema.usualTimeUnitAt(path).orElseGet(() -> usual.of(kind))))
                .orElse(typed);
    }

    private static List<String> under(List<String> path, String key) {
        List<String> longer = new ArrayList<>(path);
        longer.add(key);
        return longer;
    }
}
