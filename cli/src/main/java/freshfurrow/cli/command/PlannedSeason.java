package freshfurrow.cli.command;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The season that a plan was made from, unchanged since. */
final class PlannedSeason {
    @Option(
            names = "--season",
            paramLabel = "SEASON",
            description = "the season file, or a folder that holds season.yaml (default: the file that the plan names)")
    private Optional<Path> season = Optional.empty();

    @Option(
            names = "--variant",
            paramLabel = "FILE",
            description =
                    "a JSON merge patch (RFC 7396) that the plan was made with; may be repeated, applied in order")
    private List<Path> variants = new ArrayList<>();

    /**
     * @param file where the plan was read from, a file or its folder
     * @throws Refusal when the season is not found, has problems, or is another one than was planned
     */
    Reading.Valid read(Path file, Plan plan) {
        Path found = season.orElseGet(() -> beside(file, plan));
        Reading reading = SeasonFiles.read(found, variants);
        if (reading instanceof Reading.Invalid invalid) {
            throw new Refusal(invalid.problems().stream().map(Object::toString).toList());
        }
        Reading.Valid read = (Reading.Valid) reading;
        if (!read.sha256().equals(plan.season().sha256())) {
            throw new Refusal(
                    found + ": is not the season that the plan was made from, or has changed since; plan again, or"
                            + " name the right one with --season, and its patches with --variant");
        }
        return read;
    }

    private static Path beside(Path file, Plan plan) {
        Path folder = PlanArgument.folder(file);
        return Stream.of(folder, folder.toAbsolutePath().normalize().resolveSibling(""))
                .map(place -> place.resolve(plan.season().file()))
                .filter(Files::isRegularFile)
                .findFirst()
                .orElseThrow(() ->
                        new Refusal(file + ": its season file " + plan.season().file()
                                + " is neither beside the plan nor in the folder above; name it with --season SEASON"));
    }
}
