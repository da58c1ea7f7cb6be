package freshfurrow.app.input;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A season as its people wrote it down.
 *
 * @param path a season file, or a folder that holds season.yaml
 * @param variants merge patches over the season file, applied in order
 */
public record GivenSeason(Path path, List<Path> variants) {
    private static final Pattern FILE_NAME = Pattern.compile(".*\\.(yaml|yml|json)");

    public GivenSeason {
        variants = List.copyOf(variants);
    }

    /**
     * What its files say.
     *
     * @throws Refused with every problem, when the season cannot be used
     */
    public Reading.Valid read() {
        Reading reading = SeasonFiles.read(path, variants);
        if (reading instanceof Reading.Invalid invalid) {
            throw new Refused(new InputRefusal.ProblemsFound(invalid.problems()));
        }
        return (Reading.Valid) reading;
    }

    /** The season file, whether it is there or not. */
    public Path file() {
        Path folder = folder();
        return Files.isRegularFile(path) || !folder.equals(path) ? path : folder.resolve("season.yaml");
    }

    /** The folder that the season is in, or will be in when it is begun. */
    public Path folder() {
        if (Files.isDirectory(path)
                || (!Files.exists(path) && !FILE_NAME.matcher(path.toString()).matches())) {
            return path;
        }
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? path.toAbsolutePath() : parent;
    }
}
