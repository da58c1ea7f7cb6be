package freshfurrow.model.mixing;

/**
 * The 1/128 of an acre on which as many fluid ounces are caught as gallons go onto an acre, a gallon being 128 fluid ounces (Ohio
 * State University Extension, AEX-520).
 */
public final class SmallPlot {
    /** International acre of 4,046.8564224 m2. */
    public static final double AREA_M2 = 4046.8564224 / 128;

    private SmallPlot() {}

    /** How far one outlet goes to cover it, m. */
    public static double distanceM(double widthM) {
        return AREA_M2 / widthM;
    }
}
