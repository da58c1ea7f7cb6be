package freshfurrow.model.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Edits of any part of a season, of any kind that is possible there. */
public final class RandomEdits {
    private static final List<String> TEXTS = List.of(
            "NO",
            "0123",
            "14:00",
            "1,200",
            "a # b",
            "a: b",
            "{",
            "]",
            "- x",
            "null",
            "größe 𝛼",
            "it's",
            "\"q\"",
            "45 ac",
            "");

    private RandomEdits() {}

    /**
     * One edit.
     *
     * @param tree of the season, with its fields
     */
    public static Edit any(Random random, Map<String, Object> tree) {
        List<String> path = new ArrayList<>();
        Object part = tree;
        while (part instanceof Map<?, ?> || part instanceof List<?>) {
            List<String> keys = keys(part);
            if (keys.isEmpty() && path.isEmpty()) {
                return new Edit.Set(List.of("new"), anyValue(random, 0));
            }
            if (!path.isEmpty() && (keys.isEmpty() || random.nextInt(4) == 0)) {
                break;
            }
            if (part instanceof Map<?, ?> && random.nextInt(5) == 0 && !isFields(path)) {
                path.add("new" + random.nextInt(3));
                return new Edit.Set(path, anyValue(random, path.get(0).equals("fields") ? 2 : 0));
            }
            String key = keys.get(random.nextInt(keys.size()));
            path.add(key);
            part = child(part, key);
        }
        boolean nested = path.contains("geometry") && !path.get(path.size() - 1).equals("geometry");
        if (nested || isFields(path)) {
            path.subList(isFields(path) ? 1 : 2, path.size()).clear();
            path.add(isFields(path) ? "F0new" : "name");
            return path.get(path.size() - 1).equals("name")
                    ? new Edit.Set(path, Value.of(anyText(random)))
                    : new Edit.Set(path, EditedFile.map("crop", "corn", "name", anyText(random)));
        }
        if (path.get(0).equals("fields") && path.size() == 2) {
            return new Edit.Remove(path);
        }
        boolean field = path.get(0).equals("fields");
        return switch (random.nextInt(4)) {
            case 0 -> new Edit.Remove(path);
            case 1 ->
                part instanceof Map ? new Edit.Remove(path) : new Edit.Append(path, anyValue(random, field ? 2 : 1));
            default -> new Edit.Set(path, anyValue(random, field ? 2 : part instanceof String ? 1 : 0));
        };
    }

    private static boolean isFields(List<String> path) {
        return path.equals(List.of("fields"));
    }

    private static Value anyValue(Random random, int depth) {
        return switch (random.nextInt(depth > 1 ? 2 : 5)) {
            case 0 -> Value.list(anyText(random), "x");
            case 1, 2 -> Value.of(anyText(random));
            default -> {
                Map<String, Value> entries = new LinkedHashMap<>();
                for (int i = 0; i < 1 + random.nextInt(3); i++) {
                    entries.put("n" + i, anyValue(random, depth + 1));
                }
                yield new Value.Entries(entries);
            }
        };
    }

    private static String anyText(Random random) {
        return TEXTS.get(random.nextInt(TEXTS.size() - 1));
    }

    private static List<String> keys(Object part) {
        List<String> keys = new ArrayList<>();
        if (part instanceof Map<?, ?> map) {
            map.keySet().forEach(key -> keys.add(key.toString()));
        } else {
            for (int i = 1; i <= ((List<?>) part).size(); i++) {
                keys.add(String.valueOf(i));
            }
        }
        return keys;
    }

    static Object child(Object part, String key) {
        Object child = part instanceof Map<?, ?> map
                ? map.get(key)
                : part instanceof List<?> list ? list.get(Integer.parseInt(key) - 1) : null;
        return child == null ? "" : child;
    }
}
