package freshfurrow.cli.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What tests saw, in {@code target/pictures} for people to look at, or, with {@code -Dpictures=../docs/pictures}, in the documents. */
final class Pictures {
    private static final Path FOLDER = Path.of(System.getProperty("pictures", "target/pictures"));

    private Pictures() {}

    static void keep(String name, Browser browser) {
        try {
            Files.createDirectories(FOLDER);
            Files.write(FOLDER.resolve(name + ".png"), browser.picture());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
