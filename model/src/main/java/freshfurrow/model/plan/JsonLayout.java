package freshfurrow.model.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Iterator;
import java.util.Map;

/**
 * Lays JSON out so that a person can read it and a line-wise comparison shows what changed: every object of a list has a
 * line of its own, everything around such lists is broken into lines, everything else stays on its line.
 */
final class JsonLayout {
    private final StringBuilder text = new StringBuilder();

    private JsonLayout() {}

    /** The text of a whole document, ending in a newline. */
    static String text(JsonNode document) {
        var layout = new JsonLayout();
        layout.writeLines(document, 0);
        return layout.text.append('\n').toString();
    }

    private void write(JsonNode node, int depth) {
        if (isListOfObjects(node) || holdsListOfObjects(node)) {
            writeLines(node, depth);
        } else {
            writeInline(node);
        }
    }

    private static boolean isListOfObjects(JsonNode node) {
        return node.isArray() && !node.isEmpty() && node.get(0).isObject();
    }

    private static boolean holdsListOfObjects(JsonNode node) {
        if (node.isObject()) {
            for (JsonNode child : node) {
                if (isListOfObjects(child) || holdsListOfObjects(child)) {
                    return true;
                }
            }
        }
        return false;
    }

    private void writeLines(JsonNode node, int depth) {
        boolean isObject = node.isObject();
        text.append(isObject ? '{' : '[');
        String separator = "\n";
        if (isObject) {
            for (Map.Entry<String, JsonNode> entry : node.properties()) {
                text.append(separator).append("  ".repeat(depth + 1));
                writeKey(entry.getKey());
                write(entry.getValue(), depth + 1);
                separator = ",\n";
            }
        } else {
            for (JsonNode element : node) {
                text.append(separator).append("  ".repeat(depth + 1));
                writeInline(element);
                separator = ",\n";
            }
        }
        text.append('\n').append("  ".repeat(depth)).append(isObject ? '}' : ']');
    }

    private void writeInline(JsonNode node) {
        if (node.isObject()) {
            text.append('{');
            for (Iterator<Map.Entry<String, JsonNode>> all = node.properties().iterator(); all.hasNext(); ) {
                Map.Entry<String, JsonNode> entry = all.next();
                writeKey(entry.getKey());
                writeInline(entry.getValue());
                text.append(all.hasNext() ? ", " : "");
            }
            text.append('}');
        } else if (node.isArray()) {
            text.append('[');
            for (Iterator<JsonNode> all = node.iterator(); all.hasNext(); ) {
                writeInline(all.next());
                text.append(all.hasNext() ? ", " : "");
            }
            text.append(']');
        } else if (node.isNumber()) {
            text.append(node.decimalValue().toPlainString());
        } else {
            text.append(node);
        }
    }

    private void writeKey(String key) {
        text.append(TextNode.valueOf(key)).append(": ");
    }
}
