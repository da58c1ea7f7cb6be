package freshfurrow.model.log;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A time in which a machine does not work.
 *
 * @param until when it works again; empty when nobody knows
 */
public record Outage(String machine, LocalDateTime from, Optional<LocalDateTime> until) {}
