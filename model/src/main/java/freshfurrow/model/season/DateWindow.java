package freshfurrow.model.season;

import java.time.LocalDate;

/** Dates between which a field should be planted, both ends included. */
public record DateWindow(LocalDate first, LocalDate last) {
    public DateWindow {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("window ends on " + last + ", before it opens on " + first);
        }
    }
}
