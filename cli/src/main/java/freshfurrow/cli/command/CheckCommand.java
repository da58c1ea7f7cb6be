package freshfurrow.cli.command;

import freshfurrow.app.season.CheckedSeason;
import freshfurrow.cli.words.SeasonSummary;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "check",
        header = "List every problem in a season, or summarize it.",
        description =
                "%nProblems go to standard error, one per line, with file, place, reason and remedy. A season without problems is summarized: area, compost needed and on hand, water, days needed and available, what is fixed, the largest loads, and the loaded weight of each rig.%n",
        footer = {
            "  freshfurrow check scenarios/first-season",
            "  freshfurrow check season.yaml --variant two-rigs.yaml"
        })
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Override
    public Integer call() {
        Output.print(spec, SeasonSummary.lines(CheckedSeason.of(season.given())));
        return Freshfurrow.OK;
    }
}
