package freshfurrow.model.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ObstacleTest {
    @TempDir
    private Path folder;

    @Test
    void aFileThatAnotherProgramTakesAwayMeanwhileIsNoObstacle() {
        Path file = folder.resolve("file");
        CompletableFuture<Void> coming = CompletableFuture.runAsync(() -> comeAndGo(file));
        while (!coming.isDone()) {
            assertThat(Obstacle.before(file, IfThere.REPLACE)).isEmpty();
        }
        coming.join();
    }

    private static void comeAndGo(Path file) {
        try {
            for (int i = 0; i < 5_000; i++) {
                Files.createFile(file);
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
