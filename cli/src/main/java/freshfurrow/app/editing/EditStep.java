package freshfurrow.app.editing;

import freshfurrow.model.read.tree.TextFile;
import java.nio.file.Path;
import java.util.List;

/**
 * Files that were changed together.
 *
 * @param files each with what it held and what it holds
 */
record EditStep(List<ChangedText> files) {
    EditStep {
        files = List.copyOf(files);
    }

    /** A file before and after. */
    record ChangedText(Path path, TextFile before, TextFile after) {
        ChangedText reversed() {
            return new ChangedText(path, after, before);
        }
    }

    EditStep reversed() {
        return new EditStep(files.stream().map(ChangedText::reversed).toList());
    }

    long characters() {
        return files.stream()
                .mapToLong(file -> (long) file.before().text().length()
                        + file.after().text().length())
                .sum();
    }
}
