package freshfurrow.model.timeline.tables;

/**
 * How much more than its exact share a load may be: a thousandth, less than any tank, scale or meter in the field tells. Without
 * it the rounding of areas, tanks and lots would ask for one more fill, or leave the last square metres without compost.
 */
public final class Leeway {
    /** Of the exact share. */
    public static final double SHARE = 0.001;

    /** A load that takes all the compost there is may lack no more of it than this, and than its thousandth, mg. */
    public static final long MOST_LACKING_MG = 10_000;

    private static final long THOUSAND = 1_000;

    /** So little of a field, a hundred square metres, is not worth a fill of its own, dm2. */
    public static final long CRUMB_DM2 = 10_000;

    private Leeway() {}

    /** The most that is let in where there is room, or compost, for {@code exact}. */
    public static long most(long exact) {
        return exact + exact / THOUSAND;
    }

    /** The least that lets in {@code wanted}: no less makes {@link #most} as large. */
    public static long least(long wanted) {
        return wanted - wanted / (THOUSAND + 1);
    }
}
