package freshfurrow.app.trial;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A field put elsewhere.
 *
 * @param machine id of the planter or sprayer that is to do it; without it, the one that does
 * @param on the day on which it is to be begun, as if it were fixed to it; without it, when its turn comes
 * @param place in the list of the machine, 0 for the first; without it, the best for that day
 */
public record Placing(String field, Optional<String> machine, Optional<LocalDate> on, OptionalInt place) {}
