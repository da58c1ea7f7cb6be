package freshfurrow.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.TextFile;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Edits of texts, as tests write them. */
final class EditedFile {
    private EditedFile() {}

    static SeasonText season(String yaml) {
        return of(TextFile.of("season.yaml", yaml));
    }

    /** A season whose fields are in a file of their own. */
    static SeasonText season(String file, String fields) {
        return of(TextFile.of("season.yaml", "fields: " + file + "\n"), TextFile.of(file, fields));
    }

    static SeasonText of(TextFile... files) {
        try {
            return SeasonText.of(List.of(files));
        } catch (FileProblem e) {
            throw new AssertionError(e.place() + e.reason(), e);
        }
    }

    static SeasonText edited(SeasonText before, Edit edit) {
        Edited edited = before.with(edit);
        assertThat(edited).as(edit.toString()).isInstanceOf(Edited.Changed.class);
        return ((Edited.Changed) edited).text();
    }

    static String edited(String yaml, Edit edit) {
        return edited(season(yaml), edit).files().get(0).text();
    }

    /** The text of the file of the fields afterwards. */
    static String edited(String file, String fields, Edit edit) {
        return edited(season(file, fields), edit).files().get(1).text();
    }

    static Edit set(String path, String text) {
        return new Edit.Set(path(path), Value.of(text));
    }

    static Edit set(String path, Value value) {
        return new Edit.Set(path(path), value);
    }

    static Edit remove(String path) {
        return new Edit.Remove(path(path));
    }

    static Edit append(String path, String text) {
        return new Edit.Append(path(path), Value.of(text));
    }

    static Edit append(String path, Value value) {
        return new Edit.Append(path(path), value);
    }

    /** Of keys and their texts by turns. */
    static Value map(String... keysAndTexts) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndTexts.length; i += 2) {
            map.put(keysAndTexts[i], keysAndTexts[i + 1]);
        }
        return Value.map(map);
    }

    static List<String> path(String path) {
        return Arrays.asList(path.split("\\.", -1));
    }
}
