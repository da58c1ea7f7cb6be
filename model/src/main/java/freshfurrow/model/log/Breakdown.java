package freshfurrow.model.log;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A machine that broke down.
 *
 * @param until when it works again; empty when nobody knows
 */
public record Breakdown(String machine, LocalDateTime from, Optional<LocalDateTime> until) {}
