package freshfurrow.model.edit;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is to stand somewhere in a season. */
public sealed interface Value {
    /** A scalar, as it is to be read: no quotes or escapes of any notation. */
    record Text(String text) implements Value {}

    /** A list. */
    record Items(List<Value> items) implements Value {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** Keys with what they hold, in order. */
    record Entries(Map<String, Value> entries) implements Value {
        public Entries {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }
    }

    static Value of(String text) {
        return new Text(text);
    }

    static Value list(String... texts) {
        return new Items(Arrays.stream(texts).map(Value::of).toList());
    }

    static Value map(Map<String, String> texts) {
        Map<String, Value> entries = new LinkedHashMap<>();
        texts.forEach((key, text) -> entries.put(key, new Text(text)));
        return new Entries(entries);
    }
}
