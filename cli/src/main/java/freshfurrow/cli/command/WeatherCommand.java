package freshfurrow.cli.command;

import freshfurrow.cli.text.WeatherReport;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.Spring;
import freshfurrow.model.weather.Springs;
import freshfurrow.model.weather.YearSpans;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "weather",
        header = "Print a season's workable days by week, over the springs of its weather record.",
        description =
                "%nThe season file names the record with the key weather. Each year of it is one spring, laid over the season's dates; beyond the recorded ones, springs are generated from the record. Topsoil water by day decides which days are workable, for each drainage class.%n",
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
            description = "years of the record to count, as 2010-2019 or 2019 (default: all)")
    private YearsConverter.Years years = YearsConverter.Years.ALL;

    @Option(
            names = "--springs",
            paramLabel = "N",
            description = "springs to count: those of the record, then generated ones (default: the record's)")
    private Optional<Integer> springs = Optional.empty();

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "seed of generated springs (default: 1)")
    private long seed = 1;

    @Override
    public Integer call() {
        Reading.Valid read = season.read();
        Season named = read.season();
        SeasonWeather weather = read.weather()
                .orElseThrow(() -> new Refusal("The season names no weather record; write weather: {file: station.csv}"
                        + " into " + read.file() + " (docs/weather.md)"));
        if (springs.isPresent() && !years.equals(YearsConverter.Years.ALL)) {
            throw new Refusal("--years and --springs exclude one another; give one of them");
        }
        Springs all = Springs.of(weather, named.first(), named.last(), seed);
        List<Spring> counted = counted(all, weather.file());
        List<Integer> recorded = counted.stream()
                .filter(spring -> !spring.generated())
                .map(spring -> all.years().get(spring.index()))
                .toList();
        Output.print(spec, WeatherReport.lines(named, weather, recorded, counted, seed));
        return Freshfurrow.OK;
    }

    private List<Spring> counted(Springs all, String file) {
        int recorded = all.years().size();
        int most = springs.orElse(recorded);
        if (most < 1 || most > MOST_SPRINGS) {
            throw new Refusal("--springs " + most + " is out of range; use 1 to 100,000");
        }
        if (most > recorded && !all.canGenerate()) {
            throw new Refusal(file + " has " + recorded + " springs; it takes " + Springs.LEAST_RECORDED
                    + " to generate more, so ask for " + recorded + " at most");
        }
        List<Spring> counted = IntStream.range(0, most)
                .filter(index -> index >= recorded || years.contains(all.years().get(index)))
                .parallel()
                .mapToObj(all::spring)
                .toList();
        if (counted.isEmpty()) {
            throw new Refusal(file + " has the season's days of " + YearSpans.words(all.years())
                    + " and of none of the years asked for");
        }
        return counted;
    }
}
