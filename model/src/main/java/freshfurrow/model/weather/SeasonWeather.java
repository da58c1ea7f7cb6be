package freshfurrow.model.weather;

import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.weather.record.Filling;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The weather record that a season file names, and how it becomes ground.
 *
 * @param file name of the record's file
 * @param about what people should know of it, such as that it is invented; empty when the season file says nothing
 * @param record with its short gaps filled
 * @param fillings what was filled, in order
 */
public record SeasonWeather(
        String file, String about, WeatherRecord record, List<Filling> fillings, GroundModel model) {
    public SeasonWeather {
        fillings = List.copyOf(fillings);
    }

    /** The years of the record whose weather of the season's days is known, in order. */
    public List<Integer> years(LocalDate first, LocalDate last) {
        return IntStream.rangeClosed(record.first().getYear(), record.last().getYear())
                .filter(year -> hasYear(year, first, last))
                .boxed()
                .toList();
    }

    /**
     * The ground of a season under the weather of the record's days from its first day's date in that year on; empty when the record
     * does not have all of them. A season's 29 February begins on the 28th of a year that has none; from the first day on, days
     * follow one another, so that a leap day neither drops nor repeats weather.
     */
    public Optional<GroundRecord> ground(int year, LocalDate first, LocalDate last) {
        LocalDate start = first.withYear(year);
        LocalDate end = start.plusDays(ChronoUnit.DAYS.between(first, last));
        if (!record.has(start, end)) {
            return Optional.empty();
        }
        int lead = lead(start);
        return record.between(start.minusDays(lead), end)
                .map(weather -> model.ground(year + " in " + file, weather, first, lead));
    }

    private boolean hasYear(int year, LocalDate first, LocalDate last) {
        LocalDate start = first.withYear(year);
        return record.has(start, start.plusDays(ChronoUnit.DAYS.between(first, last)));
    }

    /** How many days right before that date are known, at most {@link GroundModel#LEAD_DAYS}. */
    private int lead(LocalDate start) {
        int lead = 0;
        while (lead < GroundModel.LEAD_DAYS && record.has(start.minusDays(lead + 1L), start.minusDays(lead + 1L))) {
            lead++;
        }
        return lead;
    }
}
