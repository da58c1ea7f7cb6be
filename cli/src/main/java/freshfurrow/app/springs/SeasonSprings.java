package freshfurrow.app.springs;

import freshfurrow.app.refusal.Refused;
import freshfurrow.app.refusal.SpringsRefusal;
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
final class SeasonSprings implements SpringSource {
    private static final int TRAINING = 20;

    /** No two seeds have a number in common. */
    private static final long MORE_THAN_SPRINGS = 1L << 20;

    private final Season season;
    private final SeasonWeather weather;
    private final Springs springs;
    private final RainHours hours;
    private final long seed;

    private SeasonSprings(Season season, SeasonWeather weather, long seed) {
        this.season = season;
        this.weather = weather;
        springs = Springs.of(weather, season.first(), season.last(), seed);
        hours = new RainHours(seed);
        this.seed = seed;
    }

    /** @throws Refused when the season names no weather record, or none of a whole spring */
    static SeasonSprings of(Reading.Valid read, long seed) {
        SeasonWeather weather = read.weather().orElseThrow(() -> new Refused(new SpringsRefusal.NoRecord(read.file())));
        SeasonSprings springs = new SeasonSprings(read.season(), weather, seed);
        if (springs.recorded() == 0) {
            throw new Refused(new SpringsRefusal.NoWholeSpring(
                    weather.file(), read.season().first(), read.season().last()));
        }
        return springs;
    }

    @Override
    public GroundRecord spring(int number) {
        return hours.in(springs.spring(number - 1).ground(), number, season.first());
    }

    @Override
    public long times(int number) {
        return MORE_THAN_SPRINGS * seed + number;
    }

    /** Springs that are years of the record: numbers 1 to this. */
    int recorded() {
        return springs.years().size();
    }

    String about() {
        return weather.file() + (weather.about().isEmpty() ? "" : " (" + weather.about() + ")");
    }

    /**
     * The numbers of a range.
     *
     * @throws Refused when the record is too short to make so many springs
     */
    List<Integer> those(SpringRange range) {
        if (range.last() > recorded() && !springs.canGenerate()) {
            throw new Refused(new SpringsRefusal.TooFewSprings(weather.file(), recorded()));
        }
        return range.numbers();
    }

    /** The first springs, as many as there are of so many. */
    List<Integer> first(int count) {
        int there = springs.canGenerate() ? count : Math.min(count, recorded());
        return IntStream.rangeClosed(1, there).boxed().toList();
    }

    /** Springs to choose plans by: generated ones that no comparison reaches, or the recorded ones where none can be made. */
    List<Integer> training() {
        int first = springs.canGenerate() ? SpringRange.MOST + 1 : 1;
        int last = springs.canGenerate() ? SpringRange.MOST + TRAINING : Math.min(TRAINING, recorded());
        return IntStream.rangeClosed(first, last).boxed().toList();
    }

    /** What those springs are. */
    SpringCount count(List<Integer> numbers) {
        int own = (int) numbers.stream().filter(number -> number <= recorded()).count();
        return new SpringCount(own, numbers.size() - own, about());
    }
}
