package freshfurrow.model.weather.record;

import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * A gap in a record that was filled, or that could not be.
 *
 * @param first first missing day
 * @param last last missing day
 * @param rain whether rain was missing; otherwise temperatures were
 * @param fromYear the year whose same dates were taken; empty when temperatures were interpolated
 */
public record Filling(LocalDate first, LocalDate last, boolean rain, OptionalInt fromYear) {

    /** What was missing, like "rain of 2003-05-04 to 2003-05-06". */
    public String words() {
        return (rain ? "rain of " : "temperature of ") + first + (first.equals(last) ? "" : " to " + last);
    }
}
