package freshfurrow.model.season;

import static freshfurrow.model.quantity.Factors.DAY_S;

import java.time.LocalDate;

/**
 * A day on which weather keeps planters off the fields of a drainage class, and the figures that say why.
 *
 * @param fromS from then on, seconds since the day's midnight, 0 to 86,399; a record of days knows no hours, and says 0
 * @param topsoilMm water in the topsoil with the day's rain, before it dries, mm, 0 or more
 * @param limitMm the most water in the topsoil that bears a planter, mm, 0 or more
 * @param rainMm rain of the day, mm, 0 or more
 */
public record WetDay(LocalDate date, int fromS, double topsoilMm, double limitMm, double rainMm) {
    public WetDay {
        if (fromS < 0 || fromS >= DAY_S) {
            throw new IllegalArgumentException("no such time of day: second " + fromS);
        }
        if (!(topsoilMm >= 0 && limitMm >= 0 && rainMm >= 0)) {
            throw new IllegalArgumentException("no such wet day: " + date + ", " + topsoilMm + " mm in the topsoil");
        }
    }

    /** A day that is wet from its midnight on. */
    public WetDay(LocalDate date, double topsoilMm, double limitMm, double rainMm) {
        this(date, 0, topsoilMm, limitMm, rainMm);
    }

    /** The same day, wet from another time on. */
    public WetDay withFromS(int otherFromS) {
        return new WetDay(date, otherFromS, topsoilMm, limitMm, rainMm);
    }

    /** Whether the ground is too wet; when it is not, the day is closed by the rain that falls on it. */
    public boolean tooWet() {
        return topsoilMm > limitMm;
    }
}
