package freshfurrow.cli.command;

import freshfurrow.app.springs.SeasonSupply;
import freshfurrow.app.springs.SpringRange;
import freshfurrow.app.springs.SupplyOrder;
import freshfurrow.cli.text.SupplyReport;
import freshfurrow.cli.words.SpringsText;
import freshfurrow.model.supply.SureShare;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "supply",
        header = "Compost and water to have, and when, so that they are enough in most springs.",
        description =
                "%nPlans the season, lives the plan through the springs of its weather record by people who know the weather so far, and counts what they use: compost to have by lot and date, the last day to order it, the first day on which it runs out, water by point and day against its limit.%n",
        footer = {
            "  freshfurrow supply season.yaml",
            "  freshfurrow supply season.yaml --springs 500 --sure 90%% --lead 14"
        })
final class SupplyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(
            names = "--springs",
            paramLabel = "N|A-B",
            converter = SpringRangeConverter.class,
            defaultValue = "100",
            description =
                    "how many springs, or which: first the years of the record, then generated ones (default: ${DEFAULT-VALUE})")
    private SpringRange springs = new SpringRange(1, 100);

    @Option(
            names = "--sure",
            paramLabel = "SHARE",
            defaultValue = "80%",
            description = "share of springs in which it is to be enough, 1%% to 99%% (default: 80%%)")
    private String sure = "80%";

    @Option(
            names = "--lead",
            paramLabel = "DAYS",
            defaultValue = "0",
            description = "days from the order of a lot to its arrival, 0 to 365 (default: ${DEFAULT-VALUE})")
    private int lead;

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "20000",
            description = "how many moves to try for the plan, 0 or more (default: ${DEFAULT-VALUE})")
    private long steps;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "any whole number; another one makes another plan and other springs (default: ${DEFAULT-VALUE})")
    private long seed;

    @Option(names = "--threads", paramLabel = "N", description = "threads to work on (default: one a core)")
    private Optional<Integer> threads = Optional.empty();

    @Override
    public Integer call() {
        SureShare share = share();
        if (lead < 0 || lead > 365) {
            throw new ParameterException(spec.commandLine(), "--lead is 0 to 365 days, not " + lead);
        }
        if (steps < 0 || threads.orElse(1) < 1) {
            throw new ParameterException(spec.commandLine(), "--steps is 0 or more, and --threads 1 or more");
        }
        SupplyOrder order = new SupplyOrder(
                season.given(), springs, share, steps, seed, threads.orElseGet(() -> Runtime.getRuntime()
                        .availableProcessors()));
        SpringsLine progress = SpringsLine.onTerminal();
        SeasonSupply supply;
        try {
            supply = SeasonSupply.of(order, progress);
        } finally {
            progress.clear();
        }
        Output.print(
                spec,
                SupplyReport.lines(
                        supply.season(),
                        supply.needs(),
                        SpringsText.of(supply.springs()),
                        supply.springs().all(),
                        share.share(),
                        lead));
        return Freshfurrow.OK;
    }

    private SureShare share() {
        String text = sure.strip();
        if (text.matches("\\d{1,2}(\\.\\d+)?\\s*%")) {
            double percent = Double.parseDouble(text.replaceAll("\\s*%", ""));
            if (percent >= 1) {
                return new SureShare(percent / 100);
            }
        }
        throw new ParameterException(
                spec.commandLine(),
                String.format(Locale.ROOT, "--sure is a share from 1%% to 99%%, like 80%%, not '%s'", sure));
    }
}
