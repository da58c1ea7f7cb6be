package freshfurrow.model.weather.generator;

import freshfurrow.model.weather.record.DailyWeather;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.Month;
import java.util.EnumMap;
import java.util.Map;

/** Rain of one month, or of all, gathered from a record. */
final class RainFit {
    private static final double LEAST_SHAPE = 0.1;
    private static final double MOST_SHAPE = 100;
    /** With fewer wet days than this a month takes its amounts from the whole record. */
    private static final int ENOUGH_WET_DAYS = 10;

    private int afterWet;
    private int wetAfterWet;
    private int afterDry;
    private int wetAfterDry;
    private int wetDays;
    private double mm;
    private double logMm;

    private RainFit() {}

    /** The rain of each month of which the record knows two days running. */
    static Map<Month, RainClimate> of(WeatherRecord record) {
        RainFit all = new RainFit();
        Map<Month, RainFit> months = new EnumMap<>(Month.class);
        for (int day = 1; day < record.days(); day++) {
            if (record.rainKnown(day) && record.rainKnown(day - 1)) {
                Month month = record.first().plusDays(day).getMonth();
                all.add(record.rainMm(day - 1), record.rainMm(day));
                months.computeIfAbsent(month, key -> new RainFit()).add(record.rainMm(day - 1), record.rainMm(day));
            }
        }
        Map<Month, RainClimate> climate = new EnumMap<>(Month.class);
        months.forEach((month, fit) -> climate.put(month, fit.climate(all)));
        return climate;
    }

    private void add(double mmBefore, double mmOfDay) {
        boolean wet = mmOfDay >= DailyWeather.WET_DAY_MM;
        if (mmBefore >= DailyWeather.WET_DAY_MM) {
            afterWet++;
            wetAfterWet += wet ? 1 : 0;
        } else {
            afterDry++;
            wetAfterDry += wet ? 1 : 0;
        }
        if (wet) {
            wetDays++;
            mm += mmOfDay;
            logMm += Math.log(mmOfDay);
        }
    }

    private RainClimate climate(RainFit all) {
        RainFit amounts = wetDays >= ENOUGH_WET_DAYS ? this : all;
        double shape = amounts.shape();
        double mean = amounts.wetDays == 0 ? 1 : amounts.mm / amounts.wetDays;
        return new RainClimate(
                afterWet > 0 ? share(wetAfterWet, afterWet) : share(all.wetAfterWet, all.afterWet),
                afterDry > 0 ? share(wetAfterDry, afterDry) : share(all.wetAfterDry, all.afterDry),
                shape,
                mean / shape);
    }

    /** Thom (1958): with a = ln(mean) - mean(ln), shape = (1 + sqrt(1 + 4 a / 3)) / (4 a). */
    private double shape() {
        if (wetDays == 0) {
            return 1;
        }
        double a = Math.log(mm / wetDays) - logMm / wetDays;
        double shape = a <= 0 ? MOST_SHAPE : (1 + Math.sqrt(1 + 4 * a / 3)) / (4 * a);
        return Math.max(LEAST_SHAPE, Math.min(MOST_SHAPE, shape));
    }

    private static double share(int some, int all) {
        return all == 0 ? 0 : (double) some / all;
    }
}
