package freshfurrow.model.log;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * One line of a season's log.
 *
 * @param number from 1, different for each entry
 * @param at local time: the end of planting, of a batch, a transfer, a drive or a draw, the beginning of rain or of an outage, otherwise
 *     when it happened or was found
 * @param fact what happened
 * @param took how long it took, above 0, where somebody said so
 * @param note in people's own words; empty when there is none
 */
public record Entry(int number, LocalDateTime at, Fact fact, Optional<Duration> took, String note) {
    public Entry {
        if (number < 1) {
            throw new IllegalArgumentException("entry " + number + ", expected 1 or more");
        }
        took.filter(time -> time.isNegative() || time.isZero()).ifPresent(time -> {
            throw new IllegalArgumentException("entry " + number + " took " + time + ", expected above 0");
        });
    }

    /** An entry that does not say how long it took. */
    public Entry(int number, LocalDateTime at, Fact fact, String note) {
        this(number, at, fact, Optional.empty(), note);
    }
}
