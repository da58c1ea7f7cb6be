package freshfurrow.cli.command;

import freshfurrow.cli.page.SeasonPage;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WholeFile;
import freshfurrow.model.read.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "page",
        header = "Make the page of a plan: one file for any browser, without a network.",
        description =
                "%nShows the season in figures, by day and by hour, on a map, as curves and as tables. Reads the season that the plan was made from: the file that the plan names, beside the plan or in the folder above, or --season. A season that has changed since is refused.%n",
        footer = {
            "  freshfurrow page scenarios/first-season/plan",
            "  freshfurrow page plan.json --season season.yaml --out monday.html"
        })
final class PageCommand implements Callable<Integer> {
    static final String FILE_NAME = "plan.html";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", index = "0", description = "a plan file, or a folder that holds plan.json")
    private Path plan = Path.of("");

    @Option(names = "--out", paramLabel = "FILE", description = "file to write (default: plan.html beside the plan)")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PlannedSeason season = new PlannedSeason();

    @Option(names = "--force", description = "replace a file that is already there")
    private boolean force;

    @Override
    public Integer call() {
        Plan planned = PlanArgument.read(plan);
        Path target = out.orElseGet(() -> PlanArgument.folder(plan).resolve(FILE_NAME));
        if (!force && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new Refusal(
                    target + ": is there already; replace it with --force, or write elsewhere with --out FILE");
        }
        Reading.Valid read = season.read(plan, planned);
        write(target, SeasonPage.html(read.season(), planned));
        Output.print(spec, List.of("Written to " + target));
        return Freshfurrow.OK;
    }

    private static void write(Path target, String page) {
        try {
            WholeFile.write(target, page);
        } catch (IOException e) {
            throw new Refusal(
                    target + ": cannot be written (" + Failures.reason(e) + "); choose another file with --out FILE");
        }
    }
}
