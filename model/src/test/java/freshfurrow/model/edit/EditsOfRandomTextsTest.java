package freshfurrow.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Tries;
import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What holds for any edit of any text: it says what was meant, and all else stays to the letter. */
final class EditsOfRandomTextsTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final int MARKS = 40;
    private static final Pattern COMMENT = Pattern.compile("# of what follows");

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
            Edit edit = RandomEdits.any(random, text.tree());
            Edited edited = text.with(edit);
            if (edited instanceof Edited.Refused why) {
                refused.add(why.problem() + "\n" + edit + "\n" + text(text, edit));
            } else {
                SeasonText after = ((Edited.Changed) edited).text();
                assertThat(after.tree())
                        .as("%s%n%s", edit, text(text, edit))
                        .isEqualTo(EditedTree.of(text.tree(), edit, isOfTable(text, edit)));
                checkBytes(text, edit, after);
                text = after;
            }
        }
    }

    private static void checkBytes(SeasonText before, Edit edit, SeasonText after) {
        String old = text(before, edit);
        String changed = text(after, edit);
        for (int i = 0; i < before.files().size(); i++) {
            TextFile file = before.files().get(i);
            if (!file.text().equals(old)) {
                assertThat(after.files().get(i).bytes()).isEqualTo(file.bytes());
            }
        }
        if (isOfTable(before, edit)) {
            checkRows(old, edit, changed);
        } else {
            checkSpan(before, edit, old, changed);
        }
        if (old.contains("\r\n")) {
            assertThat(changed.replace("\r\n", "")).doesNotContain("\n");
        } else {
            assertThat(changed).doesNotContain("\r\n");
        }
    }

    /** All rows but the header and the field's own stay; of a row that goes, only the line break goes with it. */
    private static void checkRows(String old, Edit edit, String changed) {
        List<String> others = CsvRow.all(old).stream()
                .filter(row -> row.start() > 0
                        && row.end() > row.start()
                        && !row.cells().get(0).text().equals(edit.path().get(1)))
                .map(row -> old.substring(row.start(), row.end()))
                .toList();
        List<String> rows = CsvRow.all(changed).stream()
                .map(row -> changed.substring(row.start(), row.end()))
                .toList();
        if (!others.isEmpty()) {
            assertThat(rows).as("%s%n%s%n=>%n%s", edit, old, changed).containsSubsequence(others);
        }
        if (edit instanceof Edit.Remove && edit.path().size() == 2) {
            CsvRow gone = CsvRow.all(old).stream()
                    .filter(row -> row.cells().get(0).text().equals(edit.path().get(1)))
                    .findFirst()
                    .orElseThrow();
            int lineBreak = old.contains("\r\n") ? 2 : 1;
            assertThat(old.length() - changed.length())
                    .as("%s%n%s%n=>%n%s", edit, old, changed)
                    .isEqualTo(gone.end() - gone.start() + lineBreak);
        }
    }

    /** All before and behind what is edited stays, and comments on lines of their own wherever they are. */
    private static void checkSpan(SeasonText before, Edit edit, String old, String changed) {
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
        String description = edit + "\n" + old + "\n=>\n" + changed;
        Object part = part(before, edit);
        if (edit instanceof Edit.Set set && set.value() instanceof Value.Text text && part instanceof String was) {
            // the old value, the new one and the keys that lead there, with their quotes and escapes; a comment may be
            // stepped over
            assertThat(gone.length()).as(description).isLessThanOrEqualTo(2 * was.length() + MARKS);
            assertThat(come.length())
                    .as(description)
                    .isLessThanOrEqualTo(2 * text.text().length()
                            + String.join("", edit.path()).length()
                            + MARKS);
        }
        if (edit instanceof Edit.Append) {
            assertThat(gone.length()).as(description).isLessThanOrEqualTo(MARKS);
        }
        if (!(edit instanceof Edit.Set)) {
            assertThat(comments(changed))
                    .as(description)
                    .isBetween(comments(old) - commentsWithin(before, edit, gone), comments(old));
        }
    }

    /** Those that go with a part that is taken out; with others, none. */
    private static int commentsWithin(SeasonText before, Edit edit, String gone) {
        boolean hasParts = !(part(before, edit) instanceof String);
        return edit instanceof Edit.Remove && hasParts ? comments(gone) : 0;
    }

    /** What stands there; an empty text for nothing. */
    private static Object part(SeasonText before, Edit edit) {
        Object part = before.tree();
        for (String key : edit.path()) {
            part = RandomEdits.child(part, key);
        }
        return part;
    }

    private static int comments(String text) {
        Matcher matcher = COMMENT.matcher(text);
        int count = 0;
        while (matcher.find()) {
            count++;
        }
        return count;
    }

    private static boolean isOfTable(SeasonText text, Edit edit) {
        return fileOfFields(text, edit).endsWith(".csv");
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
}
