package freshfurrow.model.season;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one spring's weather does to the ground: the days on which fields are too wet to plant. Its dates are those of the season it
 * is laid over, whatever year the weather is from.
 *
 * @param origin where the weather is from, as people know it
 * @param rainMm depth of rain by day, mm, of the days on which it rains 0.01 in (0.25 mm) or more, in order
 * @param wet days on which no field of a drainage class is planted, in order, each day once; every class has a list
 */
public record GroundRecord(String origin, Map<LocalDate, Double> rainMm, Map<Drainage, List<WetDay>> wet) {
    public GroundRecord {
        rainMm = Collections.unmodifiableMap(new LinkedHashMap<>(rainMm));
        Map<Drainage, List<WetDay>> days = new EnumMap<>(Drainage.class);
        for (Drainage drainage : Drainage.values()) {
            days.put(drainage, List.copyOf(wet.getOrDefault(drainage, List.of())));
        }
        wet = Collections.unmodifiableMap(days);
        wet.values().forEach(GroundRecord::refuseDisorder);
    }

    /** This record with other wet days. */
    public GroundRecord withWet(Map<Drainage, List<WetDay>> other) {
        return new GroundRecord(origin, rainMm, other);
    }

    /** The days on which no field of that drainage class is planted, in order. */
    public List<WetDay> wetDays(Drainage drainage) {
        return wet.getOrDefault(drainage, List.of());
    }

    private static void refuseDisorder(List<WetDay> days) {
        for (int i = 1; i < days.size(); i++) {
            if (!days.get(i).date().isAfter(days.get(i - 1).date())) {
                throw new IllegalArgumentException("wet day " + days.get(i).date() + " after "
                        + days.get(i - 1).date());
            }
        }
    }
}
