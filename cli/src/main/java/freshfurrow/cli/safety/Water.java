package freshfurrow.cli.safety;

/** What water weighs. */
public final class Water {
    /**
     * Density at 4 °C, where water is heaviest, kg/L: 999.975 kg/m3 (Tanaka, Girard, Davis, Peuto and Bignell,
     * 'Recommended table for the density of water between 0 °C and 40 °C', Metrologia 38 (2001) 301-309, recommended by the
     * CIPM). At 30 °C it is 0.4 % lighter.
     */
    public static final double HEAVIEST_KG_PER_L = 0.999975;

    private Water() {}

    /** The mass of water or mix, kg, of so many litres, never too small. */
    public static double kilograms(double litres) {
        return litres * HEAVIEST_KG_PER_L;
    }
}
