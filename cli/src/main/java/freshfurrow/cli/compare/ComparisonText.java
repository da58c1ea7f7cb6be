package freshfurrow.cli.compare;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Map;

/** Lays the tree of a comparison out: one key a line down to the keys of a variant, and one spring a line. */
final class ComparisonText {
    private static final int INLINE_FROM = 4;

    private final StringBuilder text = new StringBuilder();

    String of(JsonNode tree) {
        write(tree, 0);
        return text.append('\n').toString();
    }

    private void write(JsonNode node, int depth) {
        boolean rows = node.isArray() && !node.isEmpty() && node.get(0).isContainerNode();
        if (!node.isContainerNode() || (depth >= INLINE_FROM && !rows) || (node.isArray() && !rows)) {
            text.append(node);
            return;
        }
        text.append(node.isObject() ? '{' : '[');
        String separator = "\n";
        if (node.isObject()) {
            for (Map.Entry<String, JsonNode> entry : node.properties()) {
                line(separator, depth).append(TextNode.valueOf(entry.getKey())).append(": ");
                write(entry.getValue(), depth + 1);
                separator = ",\n";
            }
        } else {
            for (JsonNode element : node) {
                line(separator, depth);
                write(element, element.isArray() ? INLINE_FROM : depth + 1);
                separator = ",\n";
            }
        }
        line("\n", depth - 1).append(node.isObject() ? '}' : ']');
    }

    private StringBuilder line(String separator, int depth) {
        return text.append(separator).append("  ".repeat(depth + 1));
    }
}
