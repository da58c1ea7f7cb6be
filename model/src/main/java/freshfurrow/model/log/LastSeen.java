package freshfurrow.model.log;

import java.time.LocalDateTime;

/**
 * Where a machine was last known to be.
 *
 * @param place id of a field, place or water point
 */
public record LastSeen(String place, LocalDateTime at) {}
