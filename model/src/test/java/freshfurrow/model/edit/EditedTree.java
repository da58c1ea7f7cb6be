package freshfurrow.model.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Maps and lists changed as an edit says, by no code of the editing itself. */
final class EditedTree {
    private EditedTree() {}

    /** @param csv whether the edit is for a table of fields with areas in ac */
    static Map<String, Object> of(Map<String, Object> before, Edit edit, boolean csv) {
        Map<String, Object> wanted = copy(before);
        Object parent = wanted;
        List<String> path = edit.path();
        for (String key : path.subList(0, path.size() - 1)) {
            parent = RandomEdits.child(parent, key);
        }
        change(parent, path.get(path.size() - 1), edit, csv);
        if (path.get(0).equals("fixed")
                && path.size() == 3
                && RandomEdits.child(wanted.get("fixed"), path.get(1)).equals(Map.of())) {
            ((Map<?, ?>) wanted.get("fixed")).remove(path.get(1));
        }
        return wanted;
    }

    private static void change(Object parent, String key, Edit edit, boolean csv) {
        if (parent instanceof List<?> list) {
            @SuppressWarnings("unchecked")
            List<Object> items = (List<Object>) list;
            int index = Integer.parseInt(key) - 1;
            if (edit instanceof Edit.Remove) {
                items.remove(index);
            } else {
                items.set(index, changed(items.get(index), edit, csv));
            }
            return;
        }
        @SuppressWarnings("unchecked")
        Map<String, Object> map = (Map<String, Object>) parent;
        Object changed = edit instanceof Edit.Remove ? "" : changed(map.getOrDefault(key, ""), edit, csv);
        if (edit instanceof Edit.Remove || (csv && changed.equals(""))) {
            map.remove(key);
        } else {
            map.put(key, key.equals("area") && csv && changed.toString().matches("[0-9]+") ? changed + " ac" : changed);
        }
    }

    private static Object changed(Object before, Edit edit, boolean csv) {
        if (edit instanceof Edit.Set set) {
            return plain(set.value(), csv);
        }
        Object item = plain(((Edit.Append) edit).item(), csv);
        if (csv) {
            return (before + " " + item).strip();
        }
        List<Object> items = new ArrayList<>();
        if (before instanceof List<?> list) {
            items.addAll(list);
        } else if (!before.equals("")) {
            items.add(before);
        }
        items.add(item);
        return items;
    }

    private static Object plain(Value value, boolean csv) {
        if (value instanceof Value.Text text) {
            return csv ? text.text().strip() : text.text();
        }
        if (value instanceof Value.Items items) {
            List<Object> all = new ArrayList<>(
                    items.items().stream().map(item -> plain(item, csv)).toList());
            return csv
                    ? String.join(" ", all.stream().map(Object::toString).toList())
                            .strip()
                    : all;
        }
        Map<String, Object> all = new LinkedHashMap<>();
        ((Value.Entries) value).entries().forEach((key, its) -> {
            Object plain = plain(its, csv);
            if (!csv || !plain.equals("")) {
                all.put(key, plain);
            }
        });
        return all;
    }

    private static Map<String, Object> copy(Map<?, ?> tree) {
        Map<String, Object> copy = new LinkedHashMap<>();
        tree.forEach((key, value) -> copy.put(key.toString(), copyOf(value)));
        return copy;
    }

    private static Object copyOf(Object value) {
        if (value instanceof Map<?, ?> map) {
            return copy(map);
        }
        return value instanceof List<?> list
                ? new ArrayList<>(list.stream().map(EditedTree::copyOf).toList())
                : value;
    }
}
