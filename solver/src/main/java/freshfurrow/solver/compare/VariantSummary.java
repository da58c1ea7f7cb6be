package freshfurrow.solver.compare;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A variant over all springs.
 *
 * @param insideWindows how often all is planted inside the windows
 * @param spreads of each measure
 * @param differences to the base, of each measure; empty for the base, and where there are fewer than two springs
 * @param money where costs are known of both
 */
public record VariantSummary(
        String name,
        Chance insideWindows,
        Map<Measure, Spread> spreads,
        Map<Measure, PairedDifference> differences,
        Optional<Money> money) {
    public VariantSummary {
        spreads = Collections.unmodifiableMap(new EnumMap<>(spreads));
        Map<Measure, PairedDifference> copy = new EnumMap<>(Measure.class);
        copy.putAll(differences);
        differences = Collections.unmodifiableMap(copy);
    }

    /** The spread of one measure. */
    public Spread spread(Measure measure) {
        Spread spread = spreads.get(measure);
        if (spread == null) {
            throw new IllegalArgumentException("no " + measure + " of " + name);
        }
        return spread;
    }

    /** Whether the springs tell the variant and the base apart by any measure. */
    public boolean toldApart() {
        return differences.values().stream().anyMatch(PairedDifference::toldApart);
    }
}
