package freshfurrow.model.weather.generator;

/**
 * Highest and lowest temperatures in the form of WGEN (Richardson and Wright, USDA ARS-8, 1984), without its radiation: annual cycles of mean and
 * standard deviation, apart for dry and wet days, and residuals that go together and last from day to day (Matalas 1967).
 */
public record TemperatureClimate(States highest, States lowest, Persistence residuals) {

    /** Cycles of one of the two temperatures on dry and on wet days, °C. */
    public record States(Cycles dry, Cycles wet) {
        Cycles of(boolean wetDay) {
            return wetDay ? wet : dry;
        }
    }

    /** Mean and standard deviation round the year, °C. */
    public record Cycles(AnnualCycle mean, AnnualCycle deviation) {
        private static final double LEAST_DEVIATION_C = 0.5;

        double temperature(int dayOfYear, double residual) {
            return mean.on(dayOfYear) + deviation(dayOfYear) * residual;
        }

        double residual(int dayOfYear, double temperature) {
            return (temperature - mean.on(dayOfYear)) / deviation(dayOfYear);
        }

        private double deviation(int dayOfYear) {
            return Math.max(LEAST_DEVIATION_C, deviation.on(dayOfYear));
        }
    }

    /**
     * Correlations of the residuals, each from -1 to 1.
     *
     * @param sameDay of highest and lowest on the same day
     * @param highestAfterHighest of the highest with the highest of the day before
     * @param highestAfterLowest of the highest with the lowest of the day before
     * @param lowestAfterHighest of the lowest with the highest of the day before
     * @param lowestAfterLowest of the lowest with the lowest of the day before
     */
    public record Persistence(
            double sameDay,
            double highestAfterHighest,
            double highestAfterLowest,
            double lowestAfterHighest,
            double lowestAfterLowest) {
        public Persistence {
            if (!(Math.abs(sameDay) < 1)) {
                throw new IllegalArgumentException("highest and lowest temperatures that say the same: " + sameDay);
            }
        }
    }
}
