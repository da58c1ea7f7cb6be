package freshfurrow.model.edit;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Text of values that were not there before.
 *
 * @param json whether it is to be JSON, rather than YAML
 * @param lineBreak what the text ends its lines with
 * @param at where a value that cannot be written was to stand
 */
record NewText(boolean json, String lineBreak, Place at) {
    /** Lines of scalars in braces are broken before they are longer. */
    static final int WIDEST = 130;

    String scalar(String text, boolean flow, Quotes before) throws FileProblem {
        if (json) {
            return ScalarText.json(text, before);
        }
        return written(ScalarText.yaml(text, flow, before), text);
    }

    private String key(String key, boolean flow) throws FileProblem {
        return json ? ScalarText.quoted(key) : written(ScalarText.yamlKey(key, flow), key);
    }

    private String written(Optional<String> written, String text) throws FileProblem {
        return written.orElseThrow(() ->
                new FileProblem(at, "'" + text + "' cannot be written", "leave out what is no letter, figure or sign"));
    }

    /**
     * A value in one piece, with lists in brackets and keys in braces.
     *
     * @param column of its first character in its line, from 0
     */
    String inFlow(Value value, int column) throws FileProblem {
        return inFlow(value, true, column);
    }

    /** A value behind its key, or the dash of an item, in a block. */
    String behindKey(Value value, int column) throws FileProblem {
        return inFlow(value, false, column);
    }

    private String inFlow(Value value, boolean flow, int column) throws FileProblem {
        if (value instanceof Value.Text text) {
            return scalar(text.text(), flow, Quotes.NONE);
        }
        List<String> parts = new ArrayList<>();
        if (value instanceof Value.Items items) {
            for (Value item : items.items()) {
                parts.add(inFlow(item, true, column + 1));
            }
            return "[" + joined(parts, column + 1) + "]";
        }
        for (Map.Entry<String, Value> entry : ((Value.Entries) value).entries().entrySet()) {
            parts.add(entry(entry.getKey(), entry.getValue(), column + 1));
        }
        return "{" + joined(parts, column + 1) + "}";
    }

    /** A key and its value as they stand in braces. */
    String entry(String key, Value value, int column) throws FileProblem {
        return key(key, true) + ": " + inFlow(value, true, column + key.length() + 2);
    }

    /** In JSON, where coordinates may be many, on one line. */
    private String joined(List<String> parts, int column) {
        if (json) {
            return String.join(", ", parts);
        }
        StringBuilder joined = new StringBuilder();
        int used = column;
        for (String part : parts) {
            if (!joined.isEmpty()) {
                boolean breaks = used + part.length() + 3 > WIDEST;
                joined.append(breaks ? "," + lineBreak + " ".repeat(column) : ", ");
                used = breaks ? column : used + 2;
            }
            joined.append(part);
            used += part.length();
        }
        return joined.toString();
    }

    /** A key and its value as lines of a block, without the last line break; what has parts of its own gets a line for each. */
    String lines(String key, Value value, int column) throws FileProblem {
        String start = " ".repeat(column) + key(key, false) + ":";
        return start + behindColon(value, column, start.length());
    }

    /**
     * What stands behind the colon of a key in a block: a blank and the value, or lines under the key.
     *
     * @param keyColumn where the key starts
     * @param column behind the colon
     */
    String behindColon(Value value, int keyColumn, int column) throws FileProblem {
        if (value instanceof Value.Entries map
                && map.entries().values().stream().anyMatch(Value.Entries.class::isInstance)) {
            return lineBreak + entryLines(map, keyColumn + 2);
        }
        if (value instanceof Value.Items list && list.items().stream().anyMatch(Value.Entries.class::isInstance)) {
            return lineBreak + itemLines(list, keyColumn + 2);
        }
        return " " + behindKey(value, column + 1);
    }

    String entryLines(Value.Entries map, int column) throws FileProblem {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, Value> entry : map.entries().entrySet()) {
            lines.add(lines(entry.getKey(), entry.getValue(), column));
        }
        return String.join(lineBreak, lines);
    }

    private String itemLines(Value.Items list, int column) throws FileProblem {
        List<String> lines = new ArrayList<>();
        for (Value item : list.items()) {
            lines.add(" ".repeat(column) + "- " + behindKey(item, column + 2));
        }
        return String.join(lineBreak, lines);
    }
}
