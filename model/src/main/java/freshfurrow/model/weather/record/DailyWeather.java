package freshfurrow.model.weather.record;

import java.time.LocalDate;

/** Weather day by day without a gap. Days count from 0. */
public final class DailyWeather {
    /** A day is wet from 0.01 in on, as in WGEN; a little less, so that rounding of units does not matter. mm. */
    public static final double WET_DAY_MM = 0.25;

    private final LocalDate first;
    private final double[] tmaxC;
    private final double[] tminC;
    private final double[] rainMm;

    /**
     * The weather of as many days as each array is long.
     *
     * @param tmaxC highest temperature of each day, °C
     * @param tminC lowest temperature of each day, °C, at most the highest
     * @param rainMm rain and melted snow of each day, mm, 0 or more
     * @throws IllegalArgumentException when a figure is missing or out of range
     */
    public DailyWeather(LocalDate first, double[] tmaxC, double[] tminC, double[] rainMm) {
        this.first = first;
        this.tmaxC = tmaxC.clone();
        this.tminC = tminC.clone();
        this.rainMm = rainMm.clone();
        if (tmaxC.length != rainMm.length || tminC.length != rainMm.length) {
            throw new IllegalArgumentException("weather of different numbers of days");
        }
        for (int day = 0; day < rainMm.length; day++) {
            if (!(tmaxC[day] >= tminC[day] && rainMm[day] >= 0)) {
                throw new IllegalArgumentException("no such weather: " + tmaxC[day] + " and " + tminC[day] + " °C, "
                        + rainMm[day] + " mm on " + first.plusDays(day));
            }
        }
    }

    public LocalDate first() {
        return first;
    }

    public int days() {
        return rainMm.length;
    }

    public LocalDate date(int day) {
        return first.plusDays(day);
    }

    /** °C. */
    public double tmaxC(int day) {
        return tmaxC[day];
    }

    /** °C. */
    public double tminC(int day) {
        return tminC[day];
    }

    /** mm. */
    public double rainMm(int day) {
        return rainMm[day];
    }
}
