package freshfurrow.app.springs;

import freshfurrow.cli.command.CompareCommand;
import freshfurrow.cli.command.Failures;
import freshfurrow.cli.command.Refusal;
import freshfurrow.cli.compare.ComparisonReader;
import freshfurrow.model.compare.ComparedSprings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Slices of a comparison, put together. */
public final class Slices {
    private Slices() {}

    /**
     * The comparison that the slices make together.
     *
     * @param parts files, or folders that hold one; 1 or more
     * @throws Refusal when one cannot be read or does not go with the others
     */
    public static ComparedSprings join(List<Path> parts) {
        Optional<ComparedSprings> joined = Optional.empty();
        for (Path part : parts) {
            Path file = Files.isDirectory(part) ? part.resolve(CompareCommand.FILE_NAME) : part;
            ComparedSprings slice = read(file);
            try {
                joined = Optional.of(joined.isPresent() ? joined.get().join(slice) : slice);
            } catch (IllegalArgumentException e) {
                throw new Refusal(file + ": does not go with the slices before it: " + e.getMessage()
                        + "; make all slices with the same season, variants, --seed, --steps and --forecast");
            }
        }
        return joined.orElseThrow();
    }

    private static ComparedSprings read(Path file) {
        try {
            return ComparisonReader.read(file);
        } catch (IOException e) {
            throw new Refusal(file + ": is no comparison that can be read (" + Failures.reason(e)
                    + "); make it again with 'freshfurrow compare'");
        }
    }
}
