package freshfurrow.model.season;

import java.time.LocalDate;

/**
 * A mass of compost that is there from a date on.
 *
 * @param massKg kg, above 0
 * @param from first day on which it may be used
 */
public record CompostLot(String id, double massKg, LocalDate from) {
    public CompostLot {
        if (!(massKg > 0)) {
            throw new IllegalArgumentException("compost lot " + id + " needs a mass above 0");
        }
    }

    /** This lot with another mass. */
    public CompostLot withMassKg(double other) {
        return new CompostLot(id, other, from);
    }

    /** This lot, there from another date on. */
    public CompostLot withFrom(LocalDate other) {
        return new CompostLot(id, massKg, other);
    }
}
