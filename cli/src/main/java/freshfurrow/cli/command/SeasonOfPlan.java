package freshfurrow.cli.command;

import freshfurrow.app.input.PlanOrigin;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFileException;
import freshfurrow.model.plan.PlanOfSeason;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The season that a plan was made from: beside the plan, in the folder above it, or where its user says. */
public final class SeasonOfPlan {
    @Option(
            names = "--season",
            paramLabel = "SEASON",
            description =
                    "the season that PLAN was made from (default: the file that it names, in its folder or the one above)")
    private Optional<Path> season = Optional.empty();

    @Option(
            names = "--variant",
            paramLabel = "FILE",
            description = "the variants that it was made with, in the same order")
    private List<Path> variants = new ArrayList<>();

    /**
     * @param planFile where the plan was read from
     * @throws Refusal when there is no such season, it cannot be used, or it is not the one that the plan was made from
     */
    Season read(Path planFile, Plan plan) {
        Path file = season.orElseGet(() -> find(planFile, plan.season().file()));
        Reading.Valid read = SeasonArgument.valid(SeasonFiles.read(file, variants));
        if (!PlanOrigin.isOf(read, plan)) {
            throw new Refusal(
                    file + ": this is not what " + planFile + " was made from (its checksum is another);"
                            + " make a new plan, or name that season with --season SEASON, and its variants with --variant FILE");
        }
        return checked(planFile, plan, read.season());
    }

    /**
     * What was left of the season when the plan was made, of which the plan names nothing that is not there.
     *
     * @throws Refusal when the plan is not of that season
     */
    public static Season checked(Path planFile, Plan plan, Season whole) {
        Season left = whatItWasMadeFor(planFile, plan, whole);
        try {
            PlanOfSeason.check(planFile, plan, whole, left);
        } catch (PlanFileException e) {
            throw new Refusal(String.valueOf(e.getMessage()));
        }
        return left;
    }

    /**
     * What was left of the season when the plan was made.
     *
     * @throws Refusal when the plan begins otherwise than that season can stand
     */
    public static Season whatItWasMadeFor(Path planFile, Plan plan, Season whole) {
        try {
            return plan.start().map(start -> start.remaining(whole)).orElse(whole);
        } catch (IllegalArgumentException e) {
            throw new Refusal(planFile + ": start: " + e.getMessage() + "; make it again with 'freshfurrow replan'");
        }
    }

    /** A plan may come from anyone, so that what it names may not lead elsewhere, through a link neither. */
    private static boolean isInItsFolder(Path file) {
        try {
            Path folder = file.getParent();
            return Files.isRegularFile(file)
                    && folder != null
                    && file.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    private static Path find(Path planFile, String name) {
        Path folder = planFile.toAbsolutePath().normalize().getParent();
        List<Path> places = Stream.iterate(folder, Objects::nonNull, Path::getParent)
                .limit(2)
                .map(place -> place.resolve(name))
                .toList();
        return places.stream()
                .filter(SeasonOfPlan::isInItsFolder)
                .findFirst()
                .orElseThrow(() -> new Refusal(planFile + ": its season is not there, neither "
                        + places.stream().map(Path::toString).collect(Collectors.joining(" nor "))
                        + "; name it with --season SEASON"));
    }
}
