package freshfurrow.app.editing;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.app.editing.EditStep.ChangedText;
import freshfurrow.model.read.tree.TextFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class EditHistoryTest {
    private final EditHistory history = new EditHistory(200, 700);

    @Test
    void noMoreThan200StepsAreKept() {
        for (int i = 0; i < 205; i++) {
            history.did(step(String.valueOf(i)));
        }
        for (int i = 204; i >= 5; i--) {
            assertThat(history.lastDone().map(EditHistoryTest::after)).contains(String.valueOf(i));
            history.undid();
        }
        assertThat(history.lastDone()).isEmpty();
        assertThat(history.lastUndone().map(EditHistoryTest::after)).contains("5");
    }

    @Test
    void largeTextsAreForgottenSoonerButNeverTheLastStep() {
        String large = "x".repeat(300);
        for (int i = 0; i < 4; i++) {
            history.did(step(large + i));
        }
        history.undid();
        history.undid();
        assertThat(history.lastDone()).isEmpty();
        assertThat(history.lastUndone().map(EditHistoryTest::after).map(text -> text.substring(large.length())))
                .isEqualTo(Optional.of("2"));
    }

    private static EditStep step(String after) {
        return new EditStep(List.of(new ChangedText(Path.of("f"), TextFile.of("f", ""), TextFile.of("f", after))));
    }

    private static String after(EditStep step) {
        return step.files().get(0).after().text();
    }
}
