package freshfurrow.model.season;

import java.time.LocalDateTime;

/**
 * A time in which a machine is out of order and does nothing.
 *
 * @param machine id of a planter or a rig
 * @param from included
 * @param until when it works again, after {@code from}
 */
public record Outage(String machine, LocalDateTime from, LocalDateTime until) {
    public Outage {
        if (!until.isAfter(from)) {
            throw new IllegalArgumentException(
                    machine + " is down until " + until + ", which is not after " + from + ", when that begins");
        }
    }
}
