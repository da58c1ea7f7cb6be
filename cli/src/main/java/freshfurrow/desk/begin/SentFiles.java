package freshfurrow.desk.begin;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.begin.FieldsText;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.UnusableMap;
import freshfurrow.app.imports.FieldImport;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Unanswered;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;

/** Files that are no text, as a page sends them: a shapefile in its parts, or a zip. */
final class SentFiles {
    private static final int MOST_FILES = 20;

    private SentFiles() {}

    /** Fields of a map, with the map as GeoJSON; of a zipped table, its text. */
    static JsonNode fields(JsonNode files) {
        try {
            FieldImport.Held held = FieldImport.read(contents(files));
            ObjectNode answer = Json.object();
            answer.set("said", Json.list(held.said()));
            if (held instanceof FieldImport.Drawn drawn) {
                GivenFields fields = drawn.fields();
                answer.put("drawn", true)
                        .put("map", FieldsText.map(fields))
                        .set("fields", FieldsData.of(fields.rows()));
                return answer;
            }
            throw Unanswered.senseless("The zip holds a table. Unzip it, and take the table that is in it.");
        } catch (UnusableMap e) {
            throw Unanswered.senseless(e.reason());
        }
    }

    private static Map<String, byte[]> contents(JsonNode files) {
        Map<String, byte[]> contents = new LinkedHashMap<>();
        try {
            for (JsonNode file : files) {
                contents.put(Json.needed(file, "name"), Base64.getDecoder().decode(Json.needed(file, "base64")));
            }
        } catch (IllegalArgumentException e) {
            throw Unanswered.senseless("The files did not arrive whole. Choose them again.");
        }
        if (contents.isEmpty() || contents.size() > MOST_FILES) {
            throw Unanswered.senseless("Choose the files of one map.");
        }
        return contents;
    }
}
