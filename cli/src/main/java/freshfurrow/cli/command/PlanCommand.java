package freshfurrow.cli.command;

import freshfurrow.app.planning.Planned;
import freshfurrow.app.planning.PlanningOrder;
import freshfurrow.app.planning.SeasonPlanning;
import freshfurrow.cli.words.PlanningReport;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "plan",
        header = "Plan a season, audit the plan, write it with its page, and print it by day.",
        description =
                "%nPlanning ends when time is up, when nothing gets better for a while, or with Ctrl-C; the best plan so far is kept. --time covers everything from the start until the files are written; with thousands of fields a short time may be exceeded. The same --seed and --steps give the same plan, byte for byte, on every run and with any number of threads; with --time that is not certain.%n",
        footer = {
            "  freshfurrow plan scenarios/first-season",
            "  freshfurrow plan season.yaml --variant two-rigs.yaml --out two-rigs",
            "  freshfurrow plan season.yaml --time 5min --force",
            "  freshfurrow plan season.yaml --steps 20000 --seed 7 --out repeatable"
        })
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "folder for plan.json and plan.html, created if missing (default: folder plan beside the season file)")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PlanningChoices choices = new PlanningChoices();

    @Override
    public Integer call() {
        return Interruption.outlivedBy(spec, this::plan);
    }

    private int plan(Interruption interruption) {
        PlanningOrder order =
                new PlanningOrder(season.given(), out, choices.options(), choices.withPage(), choices.force());
        Planned planned = SeasonPlanning.plan(order, interruption.stop(), new PlanningProgress(interruption));
        Output.print(spec, PlanningReport.lines(planned));
        return Freshfurrow.OK;
    }
}
