package freshfurrow.model.weather;

/**
 * Runoff of a day's rain by the curve number: USDA NRCS, <i>National Engineering Handbook</i>, part 630, chapter 10. Average runoff
 * condition; initial abstraction 0.2 S.
 */
final class CurveNumber {
    private static final double MM_PER_INCH = 25.4;

    private CurveNumber() {}

    /**
     * Water that runs off.
     *
     * @param rainMm rain of the day, mm, 0 or more
     * @param curveNumber above 0, at most 100
     * @return mm, from 0 to all the rain; never falls by less rain
     */
    static double runoffMm(double rainMm, double curveNumber) {
        double retention = (1000 / curveNumber - 10) * MM_PER_INCH;
        double beyondAbstraction = rainMm - 0.2 * retention;
        return beyondAbstraction <= 0 ? 0 : beyondAbstraction * beyondAbstraction / (rainMm + 0.8 * retention);
    }
}
