package freshfurrow.model.read;

import freshfurrow.model.weather.record.DailyWeather;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whether a record's temperatures can be those of a planting season at a latitude. Common sense, no source: the mean over the
 * season's days is from 0 to 40 °C, and half a degree less for each degree of latitude beyond 30. Fahrenheit taken for Celsius
 * lies above, Celsius taken for Fahrenheit below.
 */
final class Plausibility {
    private static final double WARMEST_C = 40;

    private Plausibility() {}

    /** What is doubtful; empty when nothing is, or when the record has no such season. */
    static Optional<String> doubt(WeatherRecord record, double latitude, LocalDate first, LocalDate last) {
        long days = ChronoUnit.DAYS.between(first, last);
        double[] means = IntStream.rangeClosed(
                        record.first().getYear(), record.last().getYear())
                .mapToObj(first::withYear)
                .map(start -> record.between(start, start.plusDays(days)))
                .flatMap(Optional::stream)
                .mapToDouble(Plausibility::meanC)
                .toArray();
        if (means.length == 0) {
            return Optional.empty();
        }
        double mean = Arrays.stream(means).average().orElse(0);
        double warmest = WARMEST_C - Math.max(0, Math.abs(latitude) - 30) / 2;
        if (mean >= 0 && mean <= warmest) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "the season's days would have a mean of %.0f C (%.0f F), which cannot be at %.0f degrees %s",
                mean,
                mean * 9 / 5 + 32,
                Math.abs(latitude),
                latitude < 0 ? "south" : "north"));
    }

    private static double meanC(DailyWeather weather) {
        return IntStream.range(0, weather.days())
                .mapToDouble(day -> (weather.tmaxC(day) + weather.tminC(day)) / 2)
                .average()
                .orElse(0);
    }
}
