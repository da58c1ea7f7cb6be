package freshfurrow.model.weather;

/** Reference evapotranspiration from temperatures alone: FAO Irrigation and Drainage Paper 56 (1998), equation 52. */
final class Hargreaves {
    /** mm of water that 1 MJ/m2 evaporates: 1 / 2.45 MJ/kg (the same paper, equation 20). */
    private static final double MM_PER_MJ = 0.408;

    private Hargreaves() {}

    /**
     * Water that well watered grass gives off in a day.
     *
     * @param tmaxC °C
     * @param tminC °C, at most {@code tmaxC}
     * @param radiationMj extraterrestrial radiation of the day, MJ/m2
     * @return mm, 0 or more
     */
    static double referenceMm(double tmaxC, double tminC, double radiationMj) {
        double mean = (tmaxC + tminC) / 2;
        return Math.max(0, 0.0023 * (mean + 17.8) * Math.sqrt(tmaxC - tminC) * MM_PER_MJ * radiationMj);
    }
}
