package freshfurrow.roads;

import com.graphhopper.util.EdgeIteratorState;
import freshfurrow.model.roads.MachineSize;

/** What a stretch of road costs a farm machine that has to fit. */
final class FarmWeighting {
    private static final double KG_PER_T = 1_000;

    /** Less than any sign tells apart. */
    private static final double LEEWAY = 1e-6;

    private final RoadValues values;
    private final double widthM;
    private final double weightT;

    FarmWeighting(RoadValues values, MachineSize size) {
        this.values = values;
        widthM = size.widthM().orElse(0) - LEEWAY;
        weightT = size.weightKg().orElse(0) / KG_PER_T - LEEWAY;
    }

    /** From the stretch's base to its other end, m; infinite where it is closed. */
    double there(EdgeIteratorState edge) {
        return edge.get(values.open) ? cost(edge) : Double.POSITIVE_INFINITY;
    }

    /** Whether it can be driven at least one way. */
    boolean isOpen(EdgeIteratorState edge) {
        return (edge.get(values.open) || edge.getReverse(values.open)) && cost(edge) < Double.POSITIVE_INFINITY;
    }

    private double cost(EdgeIteratorState edge) {
        boolean fits = edge.get(values.mostWidthM) >= widthM && edge.get(values.mostWeightT) >= weightT;
        return fits ? edge.getDistance() * edge.get(values.slowness) : Double.POSITIVE_INFINITY;
    }
}
