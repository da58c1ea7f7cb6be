package freshfurrow.cli.needs;

import freshfurrow.model.season.Rig;
import java.util.OptionalDouble;

/**
 * What a rig carries at its heaviest: its nurse tank full of water and the compost of one batch. Tanks, drum, pump, hoses,
 * fuel and people are not in it.
 *
 * @param waterKg 1 kg a litre, about 8.34 lb a US gallon (NIST Special Publication 811 for the factors)
 * @param compostKg of a full batch
 * @param payloadKg what the vehicle may carry, where known
 */
public record RigWeight(String rig, double waterKg, double compostKg, OptionalDouble payloadKg) {
    private static final double WATER_KG_PER_L = 1;

    public static RigWeight of(Rig rig) {
        return new RigWeight(rig.id(), rig.nurseTankL() * WATER_KG_PER_L, rig.batchCompostKg(), rig.payloadKg());
    }

    public double loadKg() {
        return waterKg + compostKg;
    }

    /** What is left of the payload for all that is not counted, kg; negative when the load alone is too heavy. */
    public OptionalDouble leftKg() {
        return payloadKg.isPresent() ? OptionalDouble.of(payloadKg.getAsDouble() - loadKg()) : OptionalDouble.empty();
    }
}
