package freshfurrow.app.springs;

import freshfurrow.app.refusal.FileFailure;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.refusal.SpringsRefusal;
import freshfurrow.cli.compare.ComparisonReader;
import freshfurrow.model.compare.ComparedSprings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Slices of a comparison, put together. */
final class Slices {
    private Slices() {}

    /**
     * The comparison that the slices make together.
     *
     * @param parts files, or folders that hold one; 1 or more
     * @throws Refused when one cannot be read or does not go with the others
     */
    static ComparedSprings join(List<Path> parts) {
        Optional<ComparedSprings> joined = Optional.empty();
        for (Path part : parts) {
            Path file = Files.isDirectory(part) ? part.resolve(SeasonComparison.FILE_NAME) : part;
            ComparedSprings slice = read(file);
            try {
                joined = Optional.of(joined.isPresent() ? joined.get().join(slice) : slice);
            } catch (IllegalArgumentException e) {
                throw new Refused(new SpringsRefusal.MisfitSlice(file, String.valueOf(e.getMessage())));
            }
        }
        return joined.orElseThrow();
    }

    private static ComparedSprings read(Path file) {
        try {
            return ComparisonReader.read(file);
        } catch (IOException e) {
            throw new Refused(new SpringsRefusal.NoComparison(file, FileFailure.reason(e)));
        }
    }
}
