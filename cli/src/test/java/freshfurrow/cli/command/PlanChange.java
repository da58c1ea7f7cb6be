package freshfurrow.cli.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/**
 * One change of one value, key or entry of a plan file, to what nobody would write but who means harm.
 *
 * @param holder JSON pointer to the object or list that is changed
 * @param key in the object, or position in the list
 * @param with JSON to put there, or the name of a key
 */
record PlanChange(Kind kind, String holder, String key, String with) {
    enum Kind {
        REPLACE,
        DROP,
        DOUBLE,
        RENAME
    }

    /** Half of a surrogate pair cannot be written otherwise. */
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    /** In place of any value: wrong kinds, and figures that no plan has. */
    private static final List<String> ANYWHERE = List.of(
            "null",
            "true",
            "[]",
            "{}",
            "\"\"",
            "-1",
            "0",
            "0.5",
            "1e15",
            "1e308",
            "1e999",
            "9223372036854775807",
            "NaN");

    private static final List<String> TIMES = List.of(
            "\"0001-01-01T00:00:00\"",
            "\"9999-12-31T23:59:59\"",
            "\"+999999999-12-31T23:59:59\"",
            "\"2026-04-21T07:00:00\"",
            "\"2027-02-30T07:00:00\"",
            "\"2027-12-24T07:00:00\"");

    private static final List<String> DATES =
            List.of("\"0001-01-01\"", "\"9999-12-31\"", "\"+999999999-12-31\"", "\"2027-02-30\"", "\"2027-12-24\"");

    private static final List<String> TEXTS = List.of(
            "\"nobody\"",
            "\"\\u001b[2J\\u0007\"",
            "\"\\u009b31m\\u0085\"",
            "\"\\u202egnp.exe\\u2066\"",
            "\"\\ud800\"",
            "\"\\u0000\"",
            "\"../../../etc/passwd\"",
            "\"" + "x".repeat(5_000) + "\"");

    /** All there are for a plan file. */
    static List<PlanChange> all(String plan) {
        List<PlanChange> all = new ArrayList<>();
        collect(parse(plan), "", all);
        return all;
    }

    /** One change of each form: which of a list's entries it is of is left to chance. */
    static List<PlanChange> ofEachForm(String plan, Random random) {
        List<PlanChange> all = new ArrayList<>(all(plan));
        Collections.shuffle(all, random);
        Map<String, PlanChange> forms = new LinkedHashMap<>();
        JsonNode whole = parse(plan);
        all.forEach(change -> forms.putIfAbsent(change.form(whole), change));
        return List.copyOf(forms.values());
    }

    /** Entries of a list are one place; activities are told apart by their kind. */
    private String form(JsonNode whole) {
        String path = (holder + "/" + key).replaceAll("/\\d+(?=/|$)", "/#");
        return kind + " " + path + " " + whole.at(holder).path("kind").asText() + " " + with;
    }

    private static void collect(JsonNode holder, String pointer, List<PlanChange> all) {
        if (holder.isObject()) {
            for (Map.Entry<String, JsonNode> entry : holder.properties()) {
                collect(entry.getValue(), pointer, entry.getKey(), all);
                TEXTS.forEach(name -> all.add(new PlanChange(Kind.RENAME, pointer, entry.getKey(), name)));
            }
        }
        for (int i = 0; holder.isArray() && i < holder.size(); i++) {
            collect(holder.get(i), pointer, String.valueOf(i), all);
            all.add(new PlanChange(Kind.DOUBLE, pointer, String.valueOf(i), ""));
        }
    }

    private static void collect(JsonNode value, String holder, String key, List<PlanChange> all) {
        inPlaceOf(value).forEach(other -> all.add(new PlanChange(Kind.REPLACE, holder, key, other)));
        all.add(new PlanChange(Kind.DROP, holder, key, ""));
        collect(value, holder + "/" + key, all);
    }

    private static Stream<String> inPlaceOf(JsonNode value) {
        if (!value.isTextual()) {
            return ANYWHERE.stream();
        }
        String text = value.textValue();
        List<String> fitting =
                text.matches("\\d{4}-\\d\\d-\\d\\dT.*") ? TIMES : text.matches("\\d{4}-\\d\\d-\\d\\d") ? DATES : TEXTS;
        return Stream.concat(ANYWHERE.stream(), fitting.stream());
    }

    /** The file with this change. */
    String in(String plan) {
        JsonNode whole = parse(plan);
        JsonNode changed = whole.at(holder);
        if (changed instanceof ObjectNode object) {
            JsonNode value = object.get(key);
            if (kind == Kind.REPLACE) {
                object.set(key, raw(with));
            } else {
                object.remove(key);
            }
            if (kind == Kind.RENAME) {
                object.set(parse(with).textValue(), value);
            }
        } else if (changed instanceof ArrayNode array) {
            int at = Integer.parseInt(key);
            if (kind == Kind.REPLACE) {
                array.set(at, raw(with));
            } else if (kind == Kind.DROP) {
                array.remove(at);
            } else {
                array.insert(at, array.get(at));
            }
        }
        try {
            return JSON.writeValueAsString(whole);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static JsonNode raw(String json) {
        return JsonNodeFactory.instance.rawValueNode(new RawValue(json));
    }

    private static JsonNode parse(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(json, e);
        }
    }

    @Override
    public String toString() {
        String shown = with.length() > 40 ? with.substring(0, 40) + "…" : with;
        return kind + " " + holder + "/" + key + " " + shown;
    }
}
