package freshfurrow.model.season;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What somebody promised of a field, to its owner or to a crew. A plan never begins it sooner or with another planter; where it cannot begin it on
 * that day, it says so.
 *
 * @param planter id of the planter that plants it
 * @param on the day on which it is begun
 */
public record Fixed(Optional<String> planter, Optional<LocalDate> on) {
    /** Nothing was promised. */
    public static final Fixed NOT = new Fixed(Optional.empty(), Optional.empty());

    /** The same planter on any day. */
    public Fixed onAnyDay() {
        return new Fixed(planter, Optional.empty());
    }
}
