package freshfurrow.model.season;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A place where rigs draw water.
 *
 * @param at absent only when distances come from a matrix
 * @param flowLPerS flow of each hose, L/s, above 0
 * @param hoses rigs that can draw at once, 1 or more
 * @param hours when it may be drawn from, on every day, closed or not
 * @param dailyLimitL L per calendar day, above 0, where there is a limit
 * @param treatmentS before each draw, s, 0 or more
 * @param hookUpS to connect and disconnect the hose for each draw, s, 0 or more
 */
public record WaterPoint(
        String id,
        Optional<GeoPoint> at,
        double flowLPerS,
        int hoses,
        WorkHours hours,
        OptionalDouble dailyLimitL,
        int treatmentS,
        int hookUpS) {
    public WaterPoint {
        if (!(flowLPerS > 0) || hoses < 1 || treatmentS < 0 || hookUpS < 0 || dailyLimitL.orElse(1) <= 0) {
            throw new IllegalArgumentException("water point " + id + " has a figure out of range");
        }
    }

    /** What each draw takes besides the drawing, s. */
    public int beforeDrawS() {
        return treatmentS + hookUpS;
    }

    /** A water point like this one, but for what is changed. */
    public WaterPointChange change() {
        return new WaterPointChange(this);
    }
}
