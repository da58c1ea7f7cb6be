package freshfurrow.model.weather.generator;

import freshfurrow.model.weather.generator.TemperatureClimate.Cycles;
import freshfurrow.model.weather.generator.TemperatureClimate.Persistence;
import freshfurrow.model.weather.generator.TemperatureClimate.States;
import freshfurrow.model.weather.record.DailyWeather;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.LocalDate;

/** Fits a climate to a record: counts for the Markov chain, Thom's estimate for the gamma distribution, least squares for the cycles. */
public final class ClimateFit {
    private final WeatherRecord record;

    private ClimateFit(WeatherRecord record) {
        this.record = record;
    }

    /** The climate that a record shows; its short gaps had better be filled. */
    public static Climate of(WeatherRecord record) {
        ClimateFit fit = new ClimateFit(record);
        return new Climate(RainFit.of(record), fit.temperatures());
    }

    private TemperatureClimate temperatures() {
        States highest = new States(cycles(true, false), cycles(true, true));
        States lowest = new States(cycles(false, false), cycles(false, true));
        return new TemperatureClimate(highest, lowest, persistence(highest, lowest));
    }

    /** The mean and, from how far days are from it, the deviation: a normal deviation is sqrt(pi / 2) times the mean distance. */
    private Cycles cycles(boolean highest, boolean wet) {
        AnnualCycle.Fit means = new AnnualCycle.Fit();
        for (int day = 0; day < record.days(); day++) {
            if (record.known(day) && wet(day) == wet) {
                means.add(dayOfYear(day), temperature(day, highest));
            }
        }
        AnnualCycle mean = means.cycle();
        AnnualCycle.Fit deviations = new AnnualCycle.Fit();
        for (int day = 0; day < record.days(); day++) {
            if (record.known(day) && wet(day) == wet) {
                double distance = Math.abs(temperature(day, highest) - mean.on(dayOfYear(day)));
                deviations.add(dayOfYear(day), distance * Math.sqrt(Math.PI / 2));
            }
        }
        return new Cycles(mean, deviations.cycle());
    }

    private Persistence persistence(States highest, States lowest) {
        Correlation sameDay = new Correlation();
        Correlation highestAfterHighest = new Correlation();
        Correlation highestAfterLowest = new Correlation();
        Correlation lowestAfterHighest = new Correlation();
        Correlation lowestAfterLowest = new Correlation();
        for (int day = 1; day < record.days(); day++) {
            if (record.known(day) && record.known(day - 1)) {
                double high = highest.of(wet(day)).residual(dayOfYear(day), record.tmaxC(day));
                double low = lowest.of(wet(day)).residual(dayOfYear(day), record.tminC(day));
                double highBefore = highest.of(wet(day - 1)).residual(dayOfYear(day - 1), record.tmaxC(day - 1));
                double lowBefore = lowest.of(wet(day - 1)).residual(dayOfYear(day - 1), record.tminC(day - 1));
                sameDay.add(high, low);
                highestAfterHighest.add(high, highBefore);
                highestAfterLowest.add(high, lowBefore);
                lowestAfterHighest.add(low, highBefore);
                lowestAfterLowest.add(low, lowBefore);
            }
        }
        return new Persistence(
                sameDay.value(),
                highestAfterHighest.value(),
                highestAfterLowest.value(),
                lowestAfterHighest.value(),
                lowestAfterLowest.value());
    }

    private boolean wet(int day) {
        return record.rainMm(day) >= DailyWeather.WET_DAY_MM;
    }

    private double temperature(int day, boolean highest) {
        return highest ? record.tmaxC(day) : record.tminC(day);
    }

    private int dayOfYear(int day) {
        LocalDate date = record.first().plusDays(day);
        return date.getDayOfYear();
    }

    /** Pearson's coefficient. */
    private static final class Correlation {
        private static final double MOST = 0.99;

        private int pairs;
        private double x;
        private double y;
        private double xx;
        private double yy;
        private double xy;

        void add(double a, double b) {
            pairs++;
            x += a;
            y += b;
            xx += a * a;
            yy += b * b;
            xy += a * b;
        }

        double value() {
            double spread = (xx - x * x / pairs) * (yy - y * y / pairs);
            double value = spread > 0 ? (xy - x * y / pairs) / Math.sqrt(spread) : 0;
            return Math.max(-MOST, Math.min(MOST, value));
        }
    }
}
