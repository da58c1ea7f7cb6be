package freshfurrow.app.springs;

import freshfurrow.cli.command.Refusal;
import freshfurrow.cli.command.SpringRange;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.Springs;
import freshfurrow.solver.lived.RainHours;
import freshfurrow.solver.lived.SpringSource;
import java.util.List;
import java.util.stream.IntStream;

/** The springs of a season's weather record, counted from 1: its years, then generated ones. */
public final class SeasonSprings implements SpringSource {
    private static final int TRAINING = 20;

    private final Season season;
    private final SeasonWeather weather;
    private final Springs springs;
    private final RainHours hours;

    private SeasonSprings(Season season, SeasonWeather weather, long seed) {
        this.season = season;
        this.weather = weather;
        springs = Springs.of(weather, season.first(), season.last(), seed);
        hours = new RainHours(seed);
    }

    /** @throws Refusal when the season names no weather record, or none of a whole spring */
    public static SeasonSprings of(Reading.Valid read, long seed) {
        SeasonWeather weather = read.weather()
                .orElseThrow(
                        () -> new Refusal(
                                read.file() + ": weather: is missing, and springs are made from a weather"
                                        + " record; write weather: {file: station.csv} with a station's days (see docs/weather.md)"));
        SeasonSprings springs = new SeasonSprings(read.season(), weather, seed);
        if (springs.recorded() == 0) {
            throw new Refusal(weather.file() + ": holds no year with all days from "
                    + read.season().first() + " to " + read.season().last() + "; give a longer record");
        }
        return springs;
    }

    @Override
    public GroundRecord spring(int number) {
        return hours.in(springs.spring(number - 1).ground(), number, season.first());
    }

    /** Springs that are years of the record: numbers 1 to this. */
    public int recorded() {
        return springs.years().size();
    }

    public String about() {
        return weather.file() + (weather.about().isEmpty() ? "" : " (" + weather.about() + ")");
    }

    /**
     * The numbers of a range.
     *
     * @throws Refusal when the record is too short to make so many springs
     */
    public List<Integer> those(SpringRange range) {
        if (range.last() > recorded() && !springs.canGenerate()) {
            throw new Refusal(weather.file() + ": holds " + recorded() + " springs, too few to make more from them; ask"
                    + " for --springs " + recorded() + " at most, or give a record of at least "
                    + Springs.LEAST_RECORDED + " years");
        }
        return range.numbers();
    }

    /** The first springs, as many as there are of so many. */
    public List<Integer> first(int count) {
        int there = springs.canGenerate() ? count : Math.min(count, recorded());
        return IntStream.rangeClosed(1, there).boxed().toList();
    }

    /** Springs to choose plans by: generated ones that no comparison reaches, or the recorded ones where none can be made. */
    public List<Integer> training() {
        int first = springs.canGenerate() ? SpringRange.MOST + 1 : 1;
        int last = springs.canGenerate() ? SpringRange.MOST + TRAINING : Math.min(TRAINING, recorded());
        return IntStream.rangeClosed(first, last).boxed().toList();
    }

    /** What those springs are, in words. */
    public String words(List<Integer> numbers) {
        long own = numbers.stream().filter(number -> number <= recorded()).count();
        return numbers.size() + " springs (" + own + " recorded, " + (numbers.size() - own) + " generated) from "
                + about();
    }
}
