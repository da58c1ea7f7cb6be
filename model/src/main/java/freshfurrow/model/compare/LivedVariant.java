package freshfurrow.model.compare;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A variant and how it lived through springs.
 *
 * @param name as people know it
 * @param yearlyCost what its machines cost a year; empty where the season names no costs
 * @param luck standard deviation of the difference to the base in the mean of each measure, between several tries to plan both; 0 for
 *     the base; empty where it is not known
 * @param springs one row for each spring, in the order of the springs, the same springs for all variants that are compared
 */
public record LivedVariant(
        String name, OptionalDouble yearlyCost, Map<Measure, Double> luck, List<SpringFigures> springs) {
    public LivedVariant {
        Map<Measure, Double> copy = new EnumMap<>(Measure.class);
        copy.putAll(luck);
        luck = Collections.unmodifiableMap(copy);
        springs = List.copyOf(springs);
        if (springs.isEmpty()) {
            throw new IllegalArgumentException("variant " + name + " has no spring");
        }
    }

    double[] figures(Measure measure) {
        return springs.stream().mapToDouble(measure::of).toArray();
    }

    boolean hasCosts() {
        return yearlyCost.isPresent()
                && springs.stream().allMatch(spring -> spring.runningCost().isPresent());
    }

    /** Of a variant with costs: what each spring costs besides {@link #yearlyCost}. */
    double[] runningCosts() {
        return springs.stream()
                .mapToDouble(spring -> spring.runningCost().orElseThrow())
                .toArray();
    }

    /** Of a variant with costs: what each spring costs in all. */
    double[] costs() {
        return springs.stream()
                .mapToDouble(spring -> spring.runningCost().orElseThrow() + yearlyCost.orElseThrow())
                .toArray();
    }
}
