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
        header = "Find how much compost and water is enough in most springs, and by when.",
        description =
                "%nPlans the season, runs the plan through the springs of its weather record, deciding each day only on the weather so far, and adds up what is used: compost by lot and date, the last day to order it, the first day it runs short, and water by point and day against the limit.%n",
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
            description = "share of springs in which it must be enough, 1%% to 99%% (default: 80%%)")
    private String sure = "80%";

    @Option(
            names = "--lead",
            paramLabel = "DAYS",
            defaultValue = "0",
            description = "days from ordering a lot to its delivery, 0 to 365 (default: ${DEFAULT-VALUE})")
    private int lead;

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "20000",
            description = "how many changes to try for the plan, 0 or more (default: ${DEFAULT-VALUE})")
    private long steps;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "any whole number; a different one makes a different plan and springs (default: ${DEFAULT-VALUE})")
    private long seed;

    @Option(names = "--threads", paramLabel = "N", description = "threads to use (default: one per core)")
    private Optional<Integer> threads = Optional.empty();

    @Override
    public Integer call() {
        SureShare share = share();
        if (lead < 0 || lead > 365) {
            throw new ParameterException(spec.commandLine(), "--lead must be 0 to 365 days, not " + lead);
        }
        if (steps < 0 || threads.orElse(1) < 1) {
            throw new ParameterException(spec.commandLine(), "--steps must be 0 or more, and --threads 1 or more");
        }
        SupplyOrder order = new SupplyOrder(
                season.given(), springs, share, steps, seed, threads.orElseGet(() -> Runtime.getRuntime()
                        .availableProcessors()));
        SpringsLine progress = new SpringsLine();
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
                String.format(Locale.ROOT, "--sure must be a share from 1%% to 99%%, like 80%%, not '%s'", sure));
    }
}
