package freshfurrow.model.compare;

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
 * @param luck by how much the mean of each measure may differ from the base's by the luck of their plans alone: twice the standard
 *     deviation of the difference; 0 where it is not known
 * @param money where costs are known of both
 */
public record VariantSummary(
        String name,
        Chance insideWindows,
        Map<Measure, Spread> spreads,
        Map<Measure, PairedDifference> differences,
        Map<Measure, Double> luck,
        Optional<Money> money) {
    public VariantSummary {
        spreads = Collections.unmodifiableMap(new EnumMap<>(spreads));
        Map<Measure, PairedDifference> copy = new EnumMap<>(Measure.class);
        copy.putAll(differences);
        differences = Collections.unmodifiableMap(copy);
        luck = Collections.unmodifiableMap(new EnumMap<>(luck));
    }

    /** The spread of one measure. */
    public Spread spread(Measure measure) {
        Spread spread = spreads.get(measure);
        if (spread == null) {
            throw new IllegalArgumentException("no " + measure + " of " + name);
        }
        return spread;
    }

    /**
     * Whether a measure tells the variant and the base apart: the springs do, and the difference is larger than what the luck of their
     * plans may bring.
     */
    public boolean toldApart(Measure measure) {
        PairedDifference difference = differences.get(measure);
        return difference != null
                && difference.toldApart()
                && Math.abs(difference.mean()) > luck.getOrDefault(measure, 0.0);
    }
}
