package freshfurrow.model.season;

import static freshfurrow.model.quantity.Factors.DAY_S;

/**
 * A span of the clock within one day.
 *
 * @param startS seconds since midnight, 0 to 86,399
 * @param endS seconds since midnight, after {@code startS}, at most 86,400
 */
public record DaySpan(int startS, int endS) {
    public DaySpan {
        if (startS < 0 || endS > DAY_S || endS <= startS) {
            throw new IllegalArgumentException("no such span of a day: " + startS + " s to " + endS + " s");
        }
    }
}
