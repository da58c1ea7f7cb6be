package freshfurrow.cli.command;

import freshfurrow.app.springs.WorkableSprings;
import freshfurrow.app.springs.YearSpan;
import freshfurrow.cli.text.WeatherReport;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "weather",
        header = "Print a season's workable days by week, from its weather record.",
        description =
                "%nThe season file names the record with the key weather. Each year of it makes one spring on the season's dates; more springs than that are generated from the record. The water in the topsoil decides which days are workable, for each drainage class.%n",
        footer = {
            "  freshfurrow weather scenarios/weather-spring",
            "  freshfurrow weather scenarios/weather-spring --years 2010-2019",
            "  freshfurrow weather scenarios/weather-spring --springs 1000 --seed 7"
        })
final class WeatherCommand implements Callable<Integer> {
    private static final int MOST_SPRINGS = 100_000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SeasonArgument season = new SeasonArgument();

    @Option(
            names = "--years",
            paramLabel = "YEARS",
            converter = YearsConverter.class,
            description = "years of the record to count, like 2010-2019 or 2019 (default: all)")
    private YearSpan years = YearSpan.ALL;

    @Option(
            names = "--springs",
            paramLabel = "N",
            description = "number of springs: those of the record, then generated ones (default: those of the record)")
    private Optional<Integer> springs = Optional.empty();

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "seed of generated springs (default: 1)")
    private long seed = 1;

    @Override
    public Integer call() {
        if (springs.isPresent() && !years.equals(YearSpan.ALL)) {
            throw new WrongArgument("--years and --springs cannot be used together; give one of them");
        }
        springs.filter(most -> most < 1 || most > MOST_SPRINGS).ifPresent(most -> {
            throw new WrongArgument("--springs " + most + " is out of range; use 1 to 100,000");
        });
        WorkableSprings workable = WorkableSprings.of(
                season.given(), years, springs.stream().mapToInt(most -> most).findAny(), seed);
        Output.print(
                spec,
                WeatherReport.lines(
                        workable.season(), workable.weather(), workable.recorded(), workable.springs(), seed));
        return Freshfurrow.OK;
    }
}
