package freshfurrow.app.springs;

import freshfurrow.app.output.OutFiles;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.files.NewFile;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A variant of a season, for a comparison.
 *
 * @param made the file, where it was written for this comparison and not before
 */
public record VariantFile(Path path, Optional<NewFile> made) {
    /** One that people have. */
    public static VariantFile there(Path path) {
        return new VariantFile(path, Optional.empty());
    }

    /**
     * Leaves nothing behind of what was written for a comparison that nothing came of.
     *
     * @throws Refused when the file cannot be taken away
     */
    public void takeBack() {
        made.ifPresent(OutFiles.MADE::takeBack);
    }
}
