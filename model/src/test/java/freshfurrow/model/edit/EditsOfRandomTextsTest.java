package freshfurrow.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Tries;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What holds for any edit of any text: it says what was meant, and all else stays to the letter. */
final class EditsOfRandomTextsTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final Pattern COMMENT = Pattern.compile("# of what follows");
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

    private final List<String> refused = new ArrayList<>();

    @Test
    void yamlSeasons() {
        for (int seed = 0; seed < Tries.of(500); seed++) {
            RandomTexts texts = new RandomTexts(seed);
            editTwice(texts.random(), TextFile.of("season.yaml", texts.yaml()));
        }
        assertThat(refused).isEmpty();
    }

    @Test
    void tablesOfFields() {
        for (int seed = 0; seed < Tries.of(300); seed++) {
            RandomTexts texts = new RandomTexts(seed);
            editTwice(texts.random(), TextFile.of("season.yaml", "fields: f.csv\n"), TextFile.of("f.csv", texts.csv()));
        }
        assertThat(refused).isEmpty();
    }

    @Test
    void mapsOfFields() {
        for (int seed = 0; seed < Tries.of(300); seed++) {
            RandomTexts texts = new RandomTexts(seed);
            editTwice(
                    texts.random(),
                    TextFile.of("season.yaml", "fields: f.json\n"),
                    TextFile.of("f.json", texts.geoJson()));
        }
        assertThat(refused).isEmpty();
    }

    @Test
    void scenarios() throws IOException, FileProblem {
        try (var folders = Files.list(SCENARIOS)) {
            for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
                List<TextFile> files = new ArrayList<>();
                files.add(TextFile.read(folder.resolve("season.yaml"), "season.yaml", 8));
                for (String name : List.of("fields.csv", "fields.geojson")) {
                    if (Files.exists(folder.resolve(name))) {
                        files.add(TextFile.read(folder.resolve(name), name, 8));
                    }
                }
                Random random = new Random(7);
                for (int i = 0; i < Tries.of(100); i++) {
                    editTwice(random, files.toArray(TextFile[]::new));
                }
            }
        }
        assertThat(refused).isEmpty();
    }

    private void editTwice(Random random, TextFile... files) {
        SeasonText text = EditedFile.of(files);
        for (int i = 0; i < 2; i++) {
            Edit edit = anyEdit(random, text.tree());
            Edited edited = text.with(edit);
            if (edited instanceof Edited.Refused why) {
                refused.add(why.problem() + "\n" + edit + "\n" + text(text, edit));
            } else {
                SeasonText after = ((Edited.Changed) edited).text();
                checkTree(text, edit, after);
                checkBytes(text, edit, after);
                text = after;
            }
        }
    }

    /** Against maps and lists changed as anyone would. */
    private static void checkTree(SeasonText before, Edit edit, SeasonText after) {
        Map<String, Object> wanted = copy(before.tree());
        Object parent = wanted;
        List<String> path = edit.path();
        for (String key : path.subList(0, path.size() - 1)) {
            parent = child(parent, key);
        }
        change(
                parent,
                path.get(path.size() - 1),
                edit,
                fileOfFields(before, edit).endsWith(".csv"));
        if (path.get(0).equals("fixed")
                && path.size() == 3
                && child(wanted.get("fixed"), path.get(1)).equals(Map.of())) {
            ((Map<?, ?>) wanted.get("fixed")).remove(path.get(1));
        }
        assertThat(after.tree()).as("%s%n%s", edit, text(before, edit)).isEqualTo(wanted);
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
        if (edit instanceof Edit.Remove || csv && changed.equals("")) {
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

    /** What is not the edit's stays: the other file, all before and behind the changed lines, and comments on lines of their own. */
    private static void checkBytes(SeasonText before, Edit edit, SeasonText after) {
        String old = text(before, edit);
        String changed = text(after, edit);
        for (int i = 0; i < before.files().size(); i++) {
            TextFile file = before.files().get(i);
            if (!file.text().equals(old)) {
                assertThat(after.files().get(i).bytes()).isEqualTo(file.bytes());
            }
        }
        int prefix = 0;
        while (prefix < Math.min(old.length(), changed.length()) && old.charAt(prefix) == changed.charAt(prefix)) {
            prefix++;
        }
        int suffix = 0;
        while (suffix < Math.min(old.length(), changed.length()) - prefix
                && old.charAt(old.length() - 1 - suffix) == changed.charAt(changed.length() - 1 - suffix)) {
            suffix++;
        }
        String gone = old.substring(prefix, old.length() - suffix);
        String come = changed.substring(prefix, changed.length() - suffix);
        boolean oneColumnMore =
                !(edit instanceof Edit.Remove) && fileOfFields(before, edit).endsWith(".csv");
        if (edit instanceof Edit.Set set && set.value() instanceof Value.Text text && !oneColumnMore) {
            // a value for a value: no more than the old and the new one, with quotes, and the words that lead there
            assertThat(come.length())
                    .as("%s%n%s%n=>%n%s", edit, old, changed)
                    .isLessThanOrEqualTo(6 * text.text().length()
                            + 40
                            + String.join("", edit.path()).length() * 2
                            + leaf(before, edit));
        }
        if (!(edit instanceof Edit.Set)) {
            assertThat(comments(changed))
                    .as("%s%n%s%n=>%n%s", edit, old, changed)
                    .isGreaterThanOrEqualTo(comments(old) - comments(gone));
        }
        if (edit instanceof Edit.Append && !oneColumnMore) {
            assertThat(gone.length()).as("%s%n%s%n=>%n%s", edit, old, changed).isLessThanOrEqualTo(40);
        }
        assertThat(changed.contains("\r\n"))
                .isEqualTo(old.contains("\r\n") && !gone.equals(old) && changed.contains("\r\n"));
        assertThat(changed.replace("\r\n", "")).as("no other line ends").satisfies(rest -> {
            if (old.contains("\r\n")) {
                assertThat(rest).doesNotContain("\n");
            }
        });
    }

    private static int leaf(SeasonText before, Edit edit) {
        Object part = before.tree();
        for (String key : edit.path()) {
            part = child(part, key);
        }
        return part.toString().length();
    }

    private static int comments(String text) {
        Matcher matcher = COMMENT.matcher(text);
        int count = 0;
        while (matcher.find()) {
            count++;
        }
        return count;
    }

    private static String fileOfFields(SeasonText text, Edit edit) {
        boolean fields = text.files().size() > 1
                && edit.path().get(0).equals("fields")
                && edit.path().size() > 1;
        return fields ? text.files().get(1).name() : "";
    }

    private static String text(SeasonText text, Edit edit) {
        return text.files().get(fileOfFields(text, edit).isEmpty() ? 0 : 1).text();
    }

    /** An edit of any part, of any kind that is possible there. */
    private static Edit anyEdit(Random random, Map<String, Object> tree) {
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

    private static Object child(Object part, String key) {
        Object child = part instanceof Map<?, ?> map
                ? map.get(key)
                : part instanceof List<?> list ? list.get(Integer.parseInt(key) - 1) : null;
        return child == null ? "" : child;
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
                ? new ArrayList<>(
                        list.stream().map(EditsOfRandomTextsTest::copyOf).toList())
                : value;
    }
}
