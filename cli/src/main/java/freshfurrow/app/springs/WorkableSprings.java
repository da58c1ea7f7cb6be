package freshfurrow.app.springs;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.refusal.Refused;
import freshfurrow.app.refusal.SpringsRefusal;
import freshfurrow.model.read.Reading;
import freshfurrow.model.season.Season;
import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.Spring;
import freshfurrow.model.weather.Springs;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * On which days a season's fields can be worked, over springs of its weather record.
 *
 * @param recorded years of the record that are among the springs
 * @param springs those recorded first, then those generated
 */
public record WorkableSprings(Season season, SeasonWeather weather, List<Integer> recorded, List<Spring> springs) {
    /**
     * Works it out.
     *
     * @param years of the record to count
     * @param most springs to count, 1 or more: those of the record, then generated ones; without it, those of the record
     * @param seed of generated springs
     * @throws Refused when the season cannot be used, or its record has no such springs
     */
    public static WorkableSprings of(GivenSeason given, YearSpan years, OptionalInt most, long seed) {
        Reading.Valid read = given.read();
        Season season = read.season();
        SeasonWeather weather = read.weather().orElseThrow(() -> new Refused(new SpringsRefusal.NoRecord(read.file())));
        Springs all = Springs.of(weather, season.first(), season.last(), seed);
        if (all.years().isEmpty()) {
            throw new Refused(new SpringsRefusal.NoWholeSpring(weather.file(), season.first(), season.last()));
        }
        List<Spring> counted = counted(all, years, most.orElse(all.years().size()), weather.file());
        List<Integer> recorded = counted.stream()
                .filter(spring -> !spring.generated())
                .map(spring -> all.years().get(spring.index()))
                .toList();
        return new WorkableSprings(season, weather, recorded, counted);
    }

    private static List<Spring> counted(Springs all, YearSpan years, int most, String record) {
        int recorded = all.years().size();
        if (most > recorded && !all.canGenerate()) {
            throw new Refused(new SpringsRefusal.TooFewSprings(record, recorded));
        }
        List<Spring> counted = IntStream.range(0, most)
                .filter(index -> index >= recorded || years.contains(all.years().get(index)))
                .parallel()
                .mapToObj(all::spring)
                .toList();
        if (counted.isEmpty()) {
            throw new Refused(new SpringsRefusal.NoSuchYears(record, all.years()));
        }
        return counted;
    }
}
