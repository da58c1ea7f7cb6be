package freshfurrow.app.editing;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.edit.Edit;
import freshfurrow.model.edit.Value;
import freshfurrow.model.example.Tries;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import freshfurrow.model.files.WriteTurn;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows of one desk, another desk, and a program beside them: each adds rains of its own to one list, and none of them is lost. */
final class EditorsAtOnceTest {
    private static final int EDITS = Tries.of(30);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void noUpdateIsLost() throws IOException {
        Path file = Files.writeString(folder.resolve("season.yaml"), "season: {name: at once} # ours\nrain: []\n");
        SeasonEditing one = new SeasonEditing(folder);
        SeasonEditing other = new SeasonEditing(folder);
        CompletableFuture.allOf(
                        CompletableFuture.runAsync(() -> append(one, "first window")),
                        CompletableFuture.runAsync(() -> append(one, "second window")),
                        CompletableFuture.runAsync(() -> append(other, "other desk")),
                        CompletableFuture.runAsync(() -> addComments(file)))
                .join();
        Object rain = one.draft().tree().get("rain");
        String text = Files.readString(file);
        assertThat((List<?>) rain).hasSize(3 * EDITS).doesNotHaveDuplicates();
        for (int i = 0; i < EDITS; i++) {
            assertThat((List<?>) rain)
                    .map(Object::toString)
                    .contains("first window " + i, "second window " + i, "other desk " + i);
            assertThat(text).containsOnlyOnce("# beside " + i + ";");
        }
        assertThat(folder.toFile().list()).containsExactly("season.yaml");
    }

    private static void append(SeasonEditing editing, String who) {
        for (int i = 0; i < EDITS; i++) {
            Edit edit = new Edit.Append(List.of("rain"), Value.of(who + " " + i));
            Map<String, String> seen = editing.draft().digests();
            while (editing.apply(List.of(edit), seen) instanceof EditAnswer.ChangedMeanwhile) {
                seen = editing.draft().digests();
            }
        }
    }

    private void addComments(Path file) {
        for (int i = 0; i < EDITS; i++) {
            String line = "# beside " + i + ";\n";
            try {
                WriteTurn.in(List.of(folder), WriteTurn.PATIENCE, turn -> {
                    String text = Files.readString(file) + line;
                    turn.write(List.of(NewFile.of(file, text, IfThere.REPLACE)));
                    return text;
                });
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
