package freshfurrow.model.mixing;

/**
 * A mass of compost in buckets: full ones, and what is left for one more.
 *
 * @param full number of full buckets, 0 or more
 * @param restKg in the last bucket, kg, less than a bucket; 0 when all are full
 */
public record Buckets(int full, double restKg) {
    /** So little of a bucket comes from the rounding of units. */
    private static final double ROUNDING = 1e-3;

    /**
     * Fills buckets.
     *
     * @param compostKg 0 or more, kg
     * @param bucketKg what one bucket holds, above 0, kg
     */
    public static Buckets of(double compostKg, double bucketKg) {
        if (!(bucketKg > 0 && compostKg >= 0)) {
            throw new IllegalArgumentException(
                    "no such buckets: " + compostKg + " kg in buckets of " + bucketKg + " kg");
        }
        int full = (int) Math.floor(compostKg / bucketKg + ROUNDING);
        double rest = compostKg - full * bucketKg;
        return new Buckets(full, rest > ROUNDING * bucketKg ? rest : 0);
    }
}
