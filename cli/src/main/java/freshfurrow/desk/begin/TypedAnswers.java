package freshfurrow.desk.begin;

import com.fasterxml.jackson.databind.JsonNode;
import freshfurrow.app.begin.Answers;
import freshfurrow.app.begin.DrawnFields;
import freshfurrow.app.begin.Entry;
import freshfurrow.app.begin.FieldRow;
import freshfurrow.app.begin.GivenFields;
import freshfurrow.app.begin.Section;
import freshfurrow.app.begin.UnitSystem;
import freshfurrow.app.begin.UnusableMap;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Unanswered;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Answers as a page sends them. */
final class TypedAnswers {
    /** More than a farm has of anything but fields. */
    private static final int MOST_ENTRIES = 100;

    private TypedAnswers() {}

    static Answers of(JsonNode order) {
        UnitSystem units = UnitSystem.of(Json.needed(order, "units"))
                .orElseThrow(() -> Unanswered.senseless("The units are us or metric."));
        Map<Section, List<Entry>> entries = new EnumMap<>(Section.class);
        for (Section section : Section.values()) {
            List<Entry> all = new ArrayList<>();
            order.path("entries").path(section.key()).forEach(entry -> all.add(entry(entry)));
            if (all.size() > MOST_ENTRIES) {
                throw Unanswered.senseless("That is more than " + MOST_ENTRIES + " of one thing.");
            }
            entries.put(section, all);
        }
        return new Answers(units, entries, fields(order), false);
    }

    private static Entry entry(JsonNode entry) {
        Map<String, String> typed = new LinkedHashMap<>();
        entry.path("typed").fieldNames().forEachRemaining(key -> Json.text(entry.path("typed"), key)
                .ifPresent(text -> typed.put(key, text)));
        return new Entry(Json.text(entry, "id").orElse(""), typed);
    }

    /** @throws Unanswered when no fields can be taken from the map */
    static GivenFields drawn(String map) {
        try {
            return DrawnFields.read(map);
        } catch (UnusableMap e) {
            throw Unanswered.senseless(e.reason());
        }
    }

    private static GivenFields fields(JsonNode order) {
        List<FieldRow> rows = FieldsData.read(order.path("fields"));
        return Json.text(order, "map")
                .map(TypedAnswers::drawn)
                .map(drawn -> {
                    if (drawn.rows().size() != rows.size()) {
                        throw Unanswered.senseless("The map has other fields than the table.");
                    }
                    return new GivenFields(rows, drawn.shapes());
                })
                .orElseGet(() -> GivenFields.table(rows));
    }
}
