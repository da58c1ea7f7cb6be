package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How a value stands in a plan file: written and read by one thing, so that they agree.
 *
 * @param tree the value as JSON
 * @param reader reads what stands under a key
 */
record JsonForm<T>(Function<T, JsonNode> tree, UnderKey<T> reader) {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    static final JsonForm<String> TEXT = new JsonForm<>(JSON::textNode, JsonPlace::text);
    static final JsonForm<Integer> COUNT = new JsonForm<>(JSON::numberNode, JsonPlace::count);
    static final JsonForm<Long> WHOLE = new JsonForm<>(JSON::numberNode, JsonPlace::whole);
    static final JsonForm<Boolean> YES_NO = new JsonForm<>(JSON::booleanNode, JsonPlace::yesOrNo);
    static final JsonForm<Double> AREA =
            new JsonForm<>(hectares -> JSON.numberNode(PlanToJson.area(hectares)), JsonPlace::number);
    static final JsonForm<Double> FIGURE =
            new JsonForm<>(figure -> JSON.numberNode(PlanToJson.figure(figure)), JsonPlace::number);
    static final JsonForm<LocalDateTime> TIME =
            new JsonForm<>(time -> JSON.textNode(PlanToJson.time(time)), JsonPlace::time);
    static final JsonForm<List<String>> TEXTS =
            new JsonForm<>(PlanToJson::ids, (place, key) -> place.list(key, JsonPlace::asText));
    static final JsonForm<Map<String, Double>> FIGURES =
            new JsonForm<>(JsonForm::figures, (place, key) -> place.map(key, JsonPlace::asNumber));

    /** Reads what stands under a key of a place. */
    @FunctionalInterface
    interface UnderKey<T> {
        T read(JsonPlace place, String key) throws PlanFileException;
    }

    /** One of some values that have names. */
    static <T> JsonForm<T> oneOf(T[] values, Function<T, String> name) {
        Map<String, T> byName = PlanFromJson.byName(values, name);
        return new JsonForm<>(value -> JSON.textNode(name.apply(value)), (place, key) -> place.oneOf(key, byName));
    }

    /** Records, one after the other. */
    static <T> JsonForm<List<T>> listOf(JsonRecord<T> form) {
        return new JsonForm<>(
                all -> {
                    ArrayNode list = JSON.arrayNode();
                    all.forEach(one -> list.add(form.tree(one)));
                    return list;
                },
                (place, key) -> place.list(key, form::read));
    }

    private static ObjectNode figures(Map<String, Double> figures) {
        ObjectNode tree = JSON.objectNode();
        figures.forEach((key, figure) -> tree.put(key, PlanToJson.figure(figure)));
        return tree;
    }
}
