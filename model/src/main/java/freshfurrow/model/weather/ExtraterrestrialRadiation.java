package freshfurrow.model.weather;

import static freshfurrow.model.quantity.Factors.DAY_S;
import static freshfurrow.model.quantity.Factors.MINUTE_S;

/**
 * Sun on top of the atmosphere: Allen, Pereira, Raes and Smith, <i>Crop evapotranspiration</i>, FAO Irrigation and Drainage Paper 56
 * (1998), equations 21 to 25. Where the sun does not rise or set that day, the sunset hour angle is 0 or pi.
 */
final class ExtraterrestrialRadiation {
    /** MJ/(m2 min). */
    private static final double SOLAR_CONSTANT = 0.0820;

    private static final double MINUTES_PER_DAY = DAY_S / MINUTE_S;

    private ExtraterrestrialRadiation() {}

    /**
     * Radiation of one day on a horizontal surface.
     *
     * @param latitudeDeg degrees, north positive, -90 to 90
     * @param dayOfYear 1 to 366
     * @return MJ/(m2 d), 0 or more
     */
    static double mjPerM2(double latitudeDeg, int dayOfYear) {
        double latitude = Math.toRadians(latitudeDeg);
        double yearAngle = 2 * Math.PI / 365 * dayOfYear;
        double inverseDistance = 1 + 0.033 * Math.cos(yearAngle);
        double declination = 0.409 * Math.sin(yearAngle - 1.39);
        double sunset = Math.acos(Math.max(-1, Math.min(1, -Math.tan(latitude) * Math.tan(declination))));
        double radiation = MINUTES_PER_DAY
                / Math.PI
                * SOLAR_CONSTANT
                * inverseDistance
                * (sunset * Math.sin(latitude) * Math.sin(declination)
                        + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset));
        return Math.max(0, radiation);
    }
}
