package freshfurrow.model.edit;

import freshfurrow.model.read.tree.Node;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Trees as maps, lists and texts, without where anything stands. */
final class Plain {
    private Plain() {}

    /** Empty when the tree is no map. */
    static Map<String, Object> map(Node node) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (node instanceof Node.Mapping its) {
            its.entries().forEach((key, value) -> {
                if (!(value instanceof Node.Nothing)) {
                    map.put(key, any(value));
                }
            });
        }
        return map;
    }

    private static Object any(Node node) {
        if (node instanceof Node.Text text) {
            return text.text();
        }
        // an item that is nothing keeps its number
        return node instanceof Node.Sequence list
                ? List.copyOf(list.items().stream().map(Plain::any).toList())
                : node instanceof Node.Mapping ? map(node) : "";
    }
}
