package freshfurrow.model.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    private Path folder;

    @Test
    void aFileIsWrittenAndNothingElseIsLeftInItsFolder() throws IOException {
        Path file = folder.resolve("plan.json");
        WholeFile.write(file, "größer\n");
        assertThat(file).hasContent("größer\n");
        assertThat(folder.toFile().list()).containsExactly("plan.json");
    }

    @Test
    void whatTheFileHeldBeforeIsReplaced() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "a longer text than the new one");
        WholeFile.write(file, "new");
        assertThat(Files.readString(file)).isEqualTo("new");
    }

    @Test
    void aWriteThatFailsLeavesNothingBeside() throws IOException {
        Path occupied = Files.createDirectories(folder.resolve("plan.json").resolve("full"))
                .getParent();
        assertThatIOException().isThrownBy(() -> WholeFile.write(occupied, "text"));
        assertThat(folder.toFile().list()).containsExactly("plan.json");
        assertThat(occupied).isDirectoryContaining(path -> path.endsWith("full"));
    }

    @Test
    void aFolderThatIsNotThereIsAnError() {
        assertThatIOException()
                .isThrownBy(() -> WholeFile.write(folder.resolve("none").resolve("plan.json"), "text"));
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aSymbolicLinkStaysOneAndItsTargetIsWritten() throws IOException {
        Path real = Files.writeString(folder.resolve("real.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
        WholeFile.write(link, "new");
        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("new");
    }
}
