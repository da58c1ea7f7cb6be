package freshfurrow.cli.safety;

/**
 * How heavy a thing may be to be lifted by hand, after the revised lifting equation (Waters, Putz-Anderson and Garg,
 * Applications Manual for the Revised NIOSH Lifting Equation, NIOSH Publication 94-110, 1994). Of its six multipliers only
 * the horizontal one is worked out; the others, of which none is above 1, can only lower the limit.
 */
public final class Lift {
    /** The load constant: the limit for the best posture there is, kg; 51 lb where the equation is printed in pounds. */
    public static final double LOAD_CONSTANT_KG = 23;

    private static final double NEAREST_CM = 25;
    /** The farthest reach for which the equation recommends any lift, cm. */
    public static final double FARTHEST_CM = 63;

    private Lift() {}

    /**
     * The recommended weight limit when nothing but the reach is short of the best, kg.
     *
     * @param reachCm from between the ankles to the hands, cm, at least 0
     * @return 23 kg x 25 / reach; 0 beyond 63 cm, where the equation recommends no lift
     */
    public static double limitKg(double reachCm) {
        return reachCm > FARTHEST_CM ? 0 : LOAD_CONSTANT_KG * NEAREST_CM / Math.max(reachCm, NEAREST_CM);
    }

    /** Whether a weight is above the limit at any reach. */
    public static boolean isOverAnyLimit(double kg) {
        return kg > LOAD_CONSTANT_KG;
    }

    /**
     * The reach from which on a weight is above the limit, cm.
     *
     * @param kg above 0
     * @return 25 to 63 cm; 0 when it is above the limit at any reach
     */
    public static double farthestReachCm(double kg) {
        return isOverAnyLimit(kg) ? 0 : Math.min(FARTHEST_CM, LOAD_CONSTANT_KG * NEAREST_CM / kg);
    }
}
