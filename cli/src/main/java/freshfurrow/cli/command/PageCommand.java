package freshfurrow.cli.command;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.plan.PageOfPlan;
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
        header = "Make the page of a plan: one file that opens in any browser, even offline.",
        description =
                "%nShows the season at a glance, by day and hour, on a map, in charts and in tables. Needs the season that the plan was made from, unchanged: the file that the plan names, beside the plan or in the folder above, or --season.%n",
        footer = {
            "  freshfurrow page scenarios/first-season/plan",
            "  freshfurrow page plan.json --season season.yaml --out monday.html"
        })
final class PageCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", index = "0", description = "a plan file, or a folder with plan.json")
    private Path plan = Path.of("");

    @Option(names = "--out", paramLabel = "FILE", description = "file to write (default: plan.html beside the plan)")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private SeasonOfPlanOptions season = new SeasonOfPlanOptions();

    @Option(names = "--force", description = "replace an existing file")
    private boolean force;

    @Override
    public Integer call() {
        Path file = PageOfPlan.write(new GivenPlan(plan), season.given(), out, force);
        Output.print(spec, List.of("Written to " + file + "; open it in a browser."));
        return Freshfurrow.OK;
    }
}
