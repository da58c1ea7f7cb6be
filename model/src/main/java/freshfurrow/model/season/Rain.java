package freshfurrow.model.season;

import static freshfurrow.model.quantity.Factors.DAY_S;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * Rain on the fields.
 *
 * @param date the day it begins
 * @param fromS seconds since that day's midnight, 0 to 86,399
 * @param mm depth, mm, 0 or more
 */
public record Rain(LocalDate date, int fromS, double mm) {
    public Rain {
        if (fromS < 0 || fromS >= DAY_S || !(mm >= 0)) {
            throw new IllegalArgumentException("no such rain: " + mm + " mm from second " + fromS);
        }
    }

    /** When it begins. */
    public LocalDateTime start() {
        return date.atStartOfDay().plusSeconds(fromS);
    }
}
