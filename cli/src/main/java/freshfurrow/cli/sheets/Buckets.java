package freshfurrow.cli.sheets;

import freshfurrow.cli.text.Figures;

/**
 * Compost counted in buckets.
 *
 * @param full buckets, 0 or more
 * @param restKg in one more bucket, kg, 0 when there is none
 */
record Buckets(int full, double restKg) {
    /** Less of a bucket than this, full or empty, cannot be told by eye. */
    private static final double SLIGHT = 0.02;

    /**
     * So much compost in buckets of a weight.
     *
     * @param compostKg 0 or more
     * @param bucketKg above 0
     */
    static Buckets of(double compostKg, double bucketKg) {
        double buckets = compostKg / bucketKg;
        int full = (int) Math.floor(buckets + SLIGHT);
        double rest = buckets - full;
        return new Buckets(full, rest < SLIGHT ? 0 : rest * bucketKg);
    }

    /** As {@code 2 buckets + 6 lb}. */
    String text(Figures figures) {
        if (full == 0) {
            return "less than a bucket";
        }
        String whole = Figures.count(full, "bucket", "buckets");
        return restKg == 0 ? whole : whole + " + " + figures.mass(restKg);
    }
}
