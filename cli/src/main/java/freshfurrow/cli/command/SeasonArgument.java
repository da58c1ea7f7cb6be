package freshfurrow.cli.command;

import freshfurrow.app.input.GivenSeason;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The season that a command works on. */
final class SeasonArgument {
    @Parameters(paramLabel = "SEASON", index = "0", description = "a season file, or a folder with season.yaml")
    private Path season = Path.of("");

    @Option(
            names = "--variant",
            paramLabel = "FILE",
            description = "a JSON merge patch (RFC 7396) for the season file; may be repeated, applied in order")
    private List<Path> variants = new ArrayList<>();

    /** As its user gave it. */
    GivenSeason given() {
        return new GivenSeason(season, variants);
    }
}
