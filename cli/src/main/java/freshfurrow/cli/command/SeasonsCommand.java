package freshfurrow.cli.command;

import freshfurrow.app.seasons.ManySeasons;
import freshfurrow.app.seasons.SeasonOutcome;
import freshfurrow.app.seasons.SeasonsOrder;
import freshfurrow.app.seasons.Slice;
import freshfurrow.cli.words.SeasonsReport;
import freshfurrow.solver.PlanningOptions;
import java.nio.file.Path;
import java.time.Duration;
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
        name = "seasons",
        header = "Plan many seasons: all of a folder, or those that a file lists.",
        description =
                "%nPlans each season as 'freshfurrow plan' does, into the folder plan beside its file, and prints a line for each. A season that is refused does not keep the others from being planned; the exit code is then 1. A season that has a plan of its files as they are now is skipped, so that the same command line goes on where it was stopped.%n",
        footer = {
            "  freshfurrow seasons farms --steps 20000",
            "  freshfurrow seasons farms.txt --slice 3/10 --time 5min"
        })
final class SeasonsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "LIST",
            description =
                    "a folder, of which each season.yaml at any depth is planned, or a file with a season on each line, as seen from its folder")
    private Path list = Path.of("");

    @Option(
            names = "--slice",
            paramLabel = "K/N",
            converter = SliceConverter.class,
            description = "only every Nth season, beginning with the Kth: one of N slices, for as many computers")
    private Slice slice = Slice.ALL;

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = TimeConverter.class,
            description = "how long each may take, like 30s, 5min or 1h (default: 30s, unless --steps is given)")
    private Optional<Duration> time = Optional.empty();

    @Mixin
    private SearchOptions search = new SearchOptions();

    @Mixin
    private ThreadsOption threads = new ThreadsOption();

    @Option(names = "--no-page", description = "write plan.json only, without plan.html, the page for a browser")
    private boolean noPage;

    @Option(names = "--force", description = "plan all again, and replace existing plans")
    private boolean force;

    @Override
    public Integer call() {
        PlanningOptions options = new PlanningOptions(time, search.steps(), search.seed(), threads.count());
        SeasonsReport report = new SeasonsReport();
        ManySeasons.plan(
                new SeasonsOrder(list, slice, options, !noPage, force), outcome -> tell(report.line(outcome), outcome));
        Output.print(spec, List.of(report.sum()));
        return report.isAnyRefused() ? Freshfurrow.PROBLEM : Freshfurrow.OK;
    }

    private void tell(String line, SeasonOutcome outcome) {
        if (outcome instanceof SeasonOutcome.NotPlanned || outcome instanceof SeasonOutcome.Outdated) {
            Output.warn(spec, line);
        } else {
            Output.print(spec, List.of(line));
        }
    }
}
