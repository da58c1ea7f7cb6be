package freshfurrow.model.weather;

import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.weather.generator.Climate;
import freshfurrow.model.weather.generator.ClimateFit;
import freshfurrow.model.weather.generator.WeatherGenerator;
import freshfurrow.model.weather.record.DailyWeather;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Springs for a season, by number: first the years of the record in order, then as many generated ones as asked for. Spring i is
 * the same whatever other springs are made, in whatever order and by how many threads; it is safe to share.
 */
public final class Springs {
    /** Fewer recorded springs are too few to fit a generator to. */
    public static final int LEAST_RECORDED = 5;

    private final SeasonWeather weather;
    private final LocalDate first;
    private final LocalDate last;
    private final List<Integer> years;
    private final int lead;
    private final Optional<WeatherGenerator> generator;
    private final long seed;

    private Springs(SeasonWeather weather, LocalDate first, LocalDate last, long seed) {
        this.weather = weather;
        this.first = first;
        this.last = last;
        this.seed = seed;
        years = weather.years(first, last);
        if (years.size() < LEAST_RECORDED) {
            lead = 0;
            generator = Optional.empty();
        } else {
            Climate climate = ClimateFit.of(weather.record());
            int days = GroundModel.LEAD_DAYS;
            while (days > 0 && !climate.covers(first.minusDays(days), first)) {
                days--;
            }
            lead = days;
            generator =
                    climate.covers(first, last) ? Optional.of(new WeatherGenerator(climate, seed)) : Optional.empty();
        }
    }

    /**
     * The springs for a season's dates.
     *
     * @param first first day of the season
     * @param last last day of the season, included
     * @param seed from which generated springs follow
     */
    public static Springs of(SeasonWeather weather, LocalDate first, LocalDate last, long seed) {
        return new Springs(weather, first, last, seed);
    }

    /** The years of the record that are springs, in order: spring 0 is the first of them. */
    public List<Integer> years() {
        return years;
    }

    /** Whether there are springs beyond the recorded ones: it takes at least {@value #LEAST_RECORDED} of those. */
    public boolean canGenerate() {
        return generator.isPresent();
    }

    /**
     * A spring.
     *
     * @param index from 0; from the number of {@link #years()} on, springs are generated
     * @throws IllegalArgumentException when there is no such spring
     */
    public Spring spring(int index) {
        if (index >= 0 && index < years.size()) {
            GroundRecord ground = weather.ground(years.get(index), first, last).orElseThrow();
            return new Spring(index, false, ground);
        }
        if (index < 0 || generator.isEmpty()) {
            throw new IllegalArgumentException("no spring " + index + " in a record of " + years.size());
        }
        int days = lead + (int) ChronoUnit.DAYS.between(first, last) + 1;
        int number = index - years.size() + 1;
        DailyWeather made = generator.get().weather(number, first.minusDays(lead), days);
        String origin = "spring " + number + " generated from " + weather.file() + " with seed " + seed;
        return new Spring(index, true, weather.model().ground(origin, made, first, lead));
    }
}
