package freshfurrow.model.read.tree;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A part of a file. Scalars keep the text as written, so that {@code 14:00} and {@code NO} are what a person means by them. */
public sealed interface Node {
    Place place();

    /** A scalar as written, without its quotes. */
    record Text(Place place, String text) implements Node {}

    /** Nothing, as in {@code key:} or {@code key: null}. */
    record Nothing(Place place) implements Node {}

    /** A list. */
    record Sequence(Place place, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /**
     * Keys with what they hold, in order.
     *
     * @param removed where a merge patch took keys away
     */
    record Mapping(Place place, Map<String, Node> entries, Map<String, Place> removed) implements Node {
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
            removed = Map.copyOf(removed);
        }

        public Mapping(Place place, Map<String, Node> entries) {
            this(place, entries, Map.of());
        }
    }

    /** What a reader of messages would call it. */
    default String noun() {
        if (this instanceof Text text) {
            return "'" + text.text() + "'";
        }
        if (this instanceof Sequence) {
            return "a list";
        }
        return this instanceof Mapping ? "a map of keys" : "empty";
    }
}
