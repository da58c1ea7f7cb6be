package freshfurrow.model.read;

import freshfurrow.model.read.tree.TextFile;
import java.nio.file.Path;

/**
 * A file that a season was read from.
 *
 * @param path where it is
 * @param text what it holds, under the name that messages give it
 */
public record SourceFile(Path path, TextFile text) {
    public String name() {
        return text.name();
    }
}
