package freshfurrow.model.plan;

import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What of a plan's start the season's log said. A later log may say otherwise, as its lines can become void, so that the next plan takes
 * this back and asks the log again.
 *
 * @param rain of the rain that the season file does not tell of
 * @param outages of those of machines
 * @param lotsKg by how much the log changed what is left of lots, by id, kg, above or below 0
 */
public record FromLog(List<Rain> rain, List<Outage> outages, Map<String, Double> lotsKg) {
    public static final FromLog NOTHING = new FromLog(List.of(), List.of(), Map.of());

    public FromLog {
        rain = List.copyOf(rain);
        outages = List.copyOf(outages);
        lotsKg = Collections.unmodifiableMap(new LinkedHashMap<>(lotsKg));
    }

    /** By how much the log changed what is left of a lot, kg. */
    public double lotKg(String lot) {
        return lotsKg.getOrDefault(lot, 0.0);
    }
}
