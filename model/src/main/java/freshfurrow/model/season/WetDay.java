package freshfurrow.model.season;

import java.time.LocalDate;

/**
 * A day on which weather keeps planters off the fields of a drainage class, and the figures that say why.
 *
 * @param topsoilMm water in the topsoil with the day's rain, before it dries, mm, 0 or more
 * @param limitMm the most water in the topsoil that bears a planter, mm, 0 or more
 * @param rainMm rain of the day, mm, 0 or more
 */
public record WetDay(LocalDate date, double topsoilMm, double limitMm, double rainMm) {
    public WetDay {
        if (!(topsoilMm >= 0 && limitMm >= 0 && rainMm >= 0)) {
            throw new IllegalArgumentException("no such wet day: " + date + ", " + topsoilMm + " mm in the topsoil");
        }
    }

    /** Whether the ground is too wet; when it is not, the day is closed by the rain that falls on it. */
    public boolean tooWet() {
        return topsoilMm > limitMm;
    }
}
