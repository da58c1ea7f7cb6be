package freshfurrow.model.quantity;

/** How many of a smaller unit make one of a larger, by definition. */
public final class Factors {
    public static final int MINUTE_S = 60;
    public static final int HOUR_S = 60 * MINUTE_S;
    /** A day on which the clock is not changed. */
    public static final int DAY_S = 24 * HOUR_S;

    public static final double M2_PER_HA = 10_000;
    public static final double DM2_PER_M2 = 100;
    public static final double DM2_PER_HA = M2_PER_HA * DM2_PER_M2;
    public static final double ML_PER_L = 1e3;
    public static final double G_PER_KG = 1e3;
    public static final double MG_PER_KG = 1e6;
    public static final int MG_PER_G = 1_000;
    public static final double M_PER_KM = 1e3;

    private Factors() {}
}
