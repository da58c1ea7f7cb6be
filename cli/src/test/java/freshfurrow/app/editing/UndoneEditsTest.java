package freshfurrow.app.editing;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.editing.EditAnswer.Saved;
import freshfurrow.model.edit.RandomEdits;
import freshfurrow.model.example.Tries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for any edits of any season: all that was done can be undone and redone to the byte. */
final class UndoneEditsTest {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"cooperative", "first-season", "metric", "mixed-farm", "spring", "weather-spring"})
    void everyStepIsUndoneAndRedoneToTheByte(String scenario) throws IOException {
        try (var files = Files.list(Path.of("..", "scenarios", scenario))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        SeasonEditing editing = new SeasonEditing(folder);
        Random random = new Random(scenario.hashCode());
        List<Map<String, String>> states = new ArrayList<>(List.of(files()));
        for (int i = 0; i < Tries.of(15); i++) {
            Draft draft = editing.draft();
            EditAnswer answer = editing.apply(List.of(RandomEdits.any(random, draft.tree())), draft.digests());
            assertThat(answer).isInstanceOf(Saved.class);
            Map<String, String> now = files();
            if (!now.equals(states.get(states.size() - 1))) {
                states.add(now);
            }
        }
        for (int i = states.size() - 2; i >= 0; i--) {
            assertThat(editing.undo()).isInstanceOf(Saved.class);
            assertThat(files()).isEqualTo(states.get(i));
        }
        for (int i = 1; i < states.size(); i++) {
            assertThat(editing.redo()).isInstanceOf(Saved.class);
            assertThat(files()).isEqualTo(states.get(i));
        }
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> texts = new HashMap<>();
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return texts;
    }
}
