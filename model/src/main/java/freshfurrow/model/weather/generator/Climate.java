package freshfurrow.model.weather.generator;

import java.time.LocalDate;
import java.time.Month;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a weather generator knows of a place, in the form of WGEN (Richardson and Wright, USDA ARS-8, 1984).
 *
 * @param rain by month; months that no record has are left out
 */
public record Climate(Map<Month, RainClimate> rain, TemperatureClimate temperatures) {
    public Climate {
        rain = Collections.unmodifiableMap(new EnumMap<>(rain));
    }

    /** Whether it knows the rain of the months of all these days, both ends included. */
    public boolean covers(LocalDate from, LocalDate to) {
        return from.datesUntil(to.plusDays(1)).allMatch(date -> rain.containsKey(date.getMonth()));
    }
}
