package freshfurrow.model.mixing;

/**
 * Flow through an outlet goes with the square root of the pressure at it (handbook law of orifices). It holds for one outlet and
 * liquid at pressures its maker allows, not for a pump or a valve that regulates.
 */
public final class PressureLaw {
    private PressureLaw() {}

    /**
     * The pressure for another rate at the same speed: pressure x (wanted / rate)^2, in the unit of {@code pressure}.
     *
     * @param pressure above 0, gauge pressure at the outlet
     * @param rate what that pressure gives, above 0; {@code wanted} is in the same unit
     */
    public static double pressureFor(double pressure, double rate, double wanted) {
        if (!(pressure > 0 && rate > 0 && wanted > 0)) {
            throw new IllegalArgumentException("pressure and rates are above 0");
        }
        double times = wanted / rate;
        return pressure * times * times;
    }
}
