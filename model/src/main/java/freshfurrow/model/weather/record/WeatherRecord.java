package freshfurrow.model.weather.record;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;

/** What a station wrote down, day by day; days may be missing. */
public final class WeatherRecord {
    private final LocalDate first;
    private final double[] tmaxC;
    private final double[] tminC;
    private final double[] rainMm;

    /**
     * A record of as many days as each array is long; NaN where nothing is known.
     *
     * @param tmaxC highest temperature, °C
     * @param tminC lowest temperature, °C
     * @param rainMm rain and melted snow, mm
     */
    public WeatherRecord(LocalDate first, double[] tmaxC, double[] tminC, double[] rainMm) {
        if (tmaxC.length != rainMm.length || tminC.length != rainMm.length || rainMm.length == 0) {
            throw new IllegalArgumentException("a record of different numbers of days, or of none");
        }
        this.first = first;
        this.tmaxC = tmaxC.clone();
        this.tminC = tminC.clone();
        this.rainMm = rainMm.clone();
    }

    public LocalDate first() {
        return first;
    }

    public LocalDate last() {
        return first.plusDays(rainMm.length - 1L);
    }

    /** Whether rain and temperatures of all days are known. */
    public boolean has(LocalDate from, LocalDate to) {
        int begin = day(from);
        int end = day(to);
        if (begin < 0 || end >= rainMm.length) {
            return false;
        }
        for (int day = begin; day <= end; day++) {
            if (!known(day)) {
                return false;
            }
        }
        return true;
    }

    /** The weather of some days, both ends included; empty when not all of them are known. */
    public Optional<DailyWeather> between(LocalDate from, LocalDate to) {
        if (!has(from, to)) {
            return Optional.empty();
        }
        int begin = day(from);
        int end = day(to) + 1;
        return Optional.of(new DailyWeather(
                from,
                Arrays.copyOfRange(tmaxC, begin, end),
                Arrays.copyOfRange(tminC, begin, end),
                Arrays.copyOfRange(rainMm, begin, end)));
    }

    /** From the first to the last, known or not. Days count from 0. */
    public int days() {
        return rainMm.length;
    }

    /** Whether rain and temperatures of a day are known. */
    public boolean known(int day) {
        return rainKnown(day) && temperaturesKnown(day);
    }

    public boolean rainKnown(int day) {
        return !Double.isNaN(rainMm[day]);
    }

    /** Whether both are known: one without the other is of no use. */
    boolean temperaturesKnown(int day) {
        return !Double.isNaN(tmaxC[day]) && !Double.isNaN(tminC[day]);
    }

    /** °C; NaN where it is not known. */
    public double tmaxC(int day) {
        return tmaxC[day];
    }

    /** °C; NaN where it is not known. */
    public double tminC(int day) {
        return tminC[day];
    }

    /** mm; NaN where it is not known. */
    public double rainMm(int day) {
        return rainMm[day];
    }

    int day(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(first, date);
    }
}
