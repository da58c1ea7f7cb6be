package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** A record as an object of a plan file: its keys in their order, each written once for the writer and the reader. */
final class JsonRecord<R> {
    private final List<JsonKey<R, ?>> keys = new ArrayList<>();
    private final Maker<R> maker;

    /** Makes a record of the values under its keys. */
    @FunctionalInterface
    interface Maker<R> {
        R made(Values<R> in) throws PlanFileException;
    }

    /** @param maker may refuse values by an {@link IllegalArgumentException}, which is told as wrong in the file */
    @SafeVarargs
    JsonRecord(Maker<R> maker, JsonKey<R, ?>... keys) {
        this.maker = maker;
        for (JsonKey<R, ?> key : keys) {
            this.keys.add(key);
        }
    }

    /** What stands under the keys of one object. */
    record Values<R>(JsonPlace place) {
        <T> T get(JsonKey<R, T> key) throws PlanFileException {
            return key.isOptional() && !place.has(key.name())
                    ? key.whenMissing().orElseThrow()
                    : key.form().reader().read(place, key.name());
        }
    }

    ObjectNode tree(R record) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        keys.forEach(key -> put(tree, record, key));
        return tree;
    }

    private static <R, T> void put(ObjectNode tree, R record, JsonKey<R, T> key) {
        T value = key.of().apply(record);
        if (key.whenMissing().filter(value::equals).isEmpty()) {
            tree.set(key.name(), key.form().tree().apply(value));
        }
    }

    R read(JsonPlace place) throws PlanFileException {
        place.withAndPerhaps(names(true), names(false).toArray(String[]::new));
        return place.valid(its -> maker.made(new Values<>(its)));
    }

    private List<String> names(boolean optional) {
        return keys.stream()
                .filter(key -> key.isOptional() == optional)
                .map(JsonKey::name)
                .toList();
    }
}
