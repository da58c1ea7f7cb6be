package freshfurrow.cli.command;

import freshfurrow.model.read.ProblemLines;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The season that a command works on. */
public final class SeasonArgument {
    @Parameters(paramLabel = "SEASON", index = "0", description = "a season file, or a folder that holds season.yaml")
    private Path season = Path.of("");

    @Option(
            names = "--variant",
            paramLabel = "FILE",
            description = "a JSON merge patch (RFC 7396) over the season file; may be repeated, applied in order")
    private List<Path> variants = new ArrayList<>();

    /** @throws Refusal with every problem, when the season cannot be used */
    Reading.Valid read() {
        return valid(SeasonFiles.read(season, variants));
    }

    /** @throws Refusal with every problem, when the season cannot be used */
    public static Reading.Valid valid(Reading reading) {
        if (reading instanceof Reading.Invalid invalid) {
            throw new Refusal(ProblemLines.of(invalid.problems()));
        }
        return (Reading.Valid) reading;
    }

    /** As its user gave it: a season file, or a folder that holds season.yaml. */
    Path path() {
        return season;
    }

    /** The folder that the season is in. */
    Path folder() {
        if (Files.isDirectory(season)) {
            return season;
        }
        Path parent = season.toAbsolutePath().getParent();
        return parent == null ? season.toAbsolutePath() : parent;
    }
}
