package freshfurrow.solver.compare;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A variant and how it lived through springs.
 *
 * @param name as people know it
 * @param yearlyCost what its machines cost a year; empty where the season names no costs
 * @param springs one row for each spring, in the order of the springs, the same springs for all variants that are compared
 */
public record LivedVariant(String name, OptionalDouble yearlyCost, List<SpringFigures> springs) {
    public LivedVariant {
        springs = List.copyOf(springs);
        if (springs.isEmpty()) {
            throw new IllegalArgumentException("variant " + name + " lived through no spring");
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
