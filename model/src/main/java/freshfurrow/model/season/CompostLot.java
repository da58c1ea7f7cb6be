package freshfurrow.model.season;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A mass of compost that is there from a date on.
 *
 * @param massKg kg, above 0
 * @param from first day on which it may be used
 * @param at id of the place where it lies; empty where nothing is said, and rigs have it wherever they make batches
 */
public record CompostLot(String id, double massKg, LocalDate from, Optional<String> at) {
    public CompostLot {
        if (!(massKg > 0)) {
            throw new IllegalArgumentException("compost lot " + id + " needs a mass above 0");
        }
    }

    /** A lot of which nobody says where it lies. */
    public CompostLot(String id, double massKg, LocalDate from) {
        this(id, massKg, from, Optional.empty());
    }

    /** This lot with another mass. */
    public CompostLot withMassKg(double other) {
        return new CompostLot(id, other, from, at);
    }

    /** This lot, there from another date on. */
    public CompostLot withFrom(LocalDate other) {
        return new CompostLot(id, massKg, other, at);
    }

    /** This lot, at that place. */
    public CompostLot withAt(Optional<String> place) {
        return new CompostLot(id, massKg, from, place);
    }
}
