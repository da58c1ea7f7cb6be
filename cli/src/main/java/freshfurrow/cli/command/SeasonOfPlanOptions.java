package freshfurrow.cli.command;

import freshfurrow.app.input.SeasonOfPlan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The season that a plan was made from: beside the plan, in the folder above it, or where its user says. */
final class SeasonOfPlanOptions {
    @Option(
            names = "--season",
            paramLabel = "SEASON",
            description =
                    "the season that PLAN was made from (default: the file that the plan names, in its folder or the one above)")
    private Optional<Path> season = Optional.empty();

    @Option(names = "--variant", paramLabel = "FILE", description = "the variants it was made with, in the same order")
    private List<Path> variants = new ArrayList<>();

    /** As its user named it. */
    SeasonOfPlan given() {
        return new SeasonOfPlan(season, variants);
    }
}
