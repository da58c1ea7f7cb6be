package freshfurrow.cli.needs;

import freshfurrow.cli.safety.Water;
import freshfurrow.model.season.Rig;
import java.util.OptionalDouble;

/**
 * What a rig carries at its heaviest: its nurse tank full of water and the compost of one batch, or all that it holds where it fetches compost. Tanks, drum, pump, hoses,
 * fuel and people are not in it.
 *
 * @param waterKg see {@link Water}, about 8.34 lb a US gallon
 * @param compostKg of a full batch, or all that it holds
 * @param payloadKg what the vehicle may carry, where known
 */
public record RigWeight(String rig, double waterKg, double compostKg, OptionalDouble payloadKg) {
    /**
     * That of a rig.
     *
     * @param fetchesCompost whether it has to fetch its compost, and so has more than a batch's on board
     */
    public static RigWeight of(Rig rig, boolean fetchesCompost) {
        return new RigWeight(
                rig.id(),
                Water.kilograms(rig.nurseTankL()),
                fetchesCompost ? rig.mostCompostKg() : rig.batchCompostKg(),
                rig.payloadKg());
    }

    public double loadKg() {
        return waterKg + compostKg;
    }

    /** What is left of the payload for all that is not counted, kg; negative when the load alone is too heavy. */
    public OptionalDouble leftKg() {
        return payloadKg.isPresent() ? OptionalDouble.of(payloadKg.getAsDouble() - loadKg()) : OptionalDouble.empty();
    }
}
