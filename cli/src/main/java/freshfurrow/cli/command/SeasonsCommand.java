package freshfurrow.cli.command;

import freshfurrow.app.seasons.ManySeasons;
import freshfurrow.app.seasons.SeasonOutcome;
import freshfurrow.app.seasons.SeasonsOrder;
import freshfurrow.app.seasons.Slice;
import freshfurrow.cli.words.SeasonsReport;
import java.nio.file.Path;
import java.util.List;
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
                "%nPlans each season as 'freshfurrow plan' does, into the folder plan beside its file, and prints a line for each. A season that is refused does not keep the others from being planned; the exit code is then 1. A season that has a plan of its files as they are now is skipped without --force, so that the same command line goes on where it was stopped.%n",
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

    @Mixin
    private PlanningChoices choices = new PlanningChoices();

    @Override
    public Integer call() {
        SeasonsReport report = new SeasonsReport();
        ManySeasons.plan(
                new SeasonsOrder(list, slice, choices.options(), choices.withPage(), choices.force()),
                outcome -> tell(report.line(outcome), outcome));
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
