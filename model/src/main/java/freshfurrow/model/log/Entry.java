package freshfurrow.model.log;

import java.time.LocalDateTime;

/**
 * One line of a season's log.
 *
 * @param number from 1, different for each entry
 * @param at local time: the end of planting, of a batch or of a draw, the beginning of rain or of an outage, otherwise when it
 *     happened or was found
 * @param note in people's own words; empty when there is none
 */
public record Entry(int number, LocalDateTime at, Fact fact, String note) {
    public Entry {
        if (number < 1) {
            throw new IllegalArgumentException("entry " + number + ", expected 1 or more");
        }
    }
}
