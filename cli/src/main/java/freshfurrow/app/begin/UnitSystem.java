package freshfurrow.app.begin;

import java.util.Arrays;
import java.util.Optional;

/** The units of a season that is begun. */
public enum UnitSystem {
    /** Acres, gallons, pounds, miles. */
    US("us", "ac"),
    /** Hectares, litres, kilograms, kilometres. */
    METRIC("metric", "ha");

    private final String symbol;
    private final String area;

    UnitSystem(String symbol, String area) {
        this.symbol = symbol;
        this.area = area;
    }

    /** As people write it. */
    public String symbol() {
        return symbol;
    }

    /** The unit of fields. */
    public String area() {
        return area;
    }

    /** The system of that symbol; empty when there is none. */
    public static Optional<UnitSystem> of(String symbol) {
        return Arrays.stream(values())
                .filter(system -> system.symbol.equalsIgnoreCase(symbol.strip()))
                .findAny();
    }
}
