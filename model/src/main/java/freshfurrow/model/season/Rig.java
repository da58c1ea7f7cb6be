package freshfurrow.model.season;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * An extraction rig: drum, strainer and pump with a nurse tank of water.
 *
 * @param drumL water in a full batch, L, above 0
 * @param batchCompostKg compost in a full batch, kg, above 0
 * @param batchTimeS to extract a full batch, s, above 0
 * @param leastBatchTime no batch takes less however small it is, s, 1 to the batch time; empty for a third of that
 * @param cleanTimeS to clean after each batch, s, 0 or more
 * @param nurseTankL L, above 0
 * @param transferLPerS rate of pumping into a planter, L/s, above 0
 * @param roadSpeedMPerS m/s, above 0
 * @param payloadKg what the vehicle may carry, kg, where known; a caution, not a rule of the timeline
 * @param bucketKg compost in a full bucket, kg, above 0, where it was weighed; for sheets and cards, not for the timeline
 * @param at id of the place where it stands when the season begins
 */
public record Rig(
        String id,
        double drumL,
        double batchCompostKg,
        int batchTimeS,
        OptionalInt leastBatchTime,
        int cleanTimeS,
        double nurseTankL,
        double transferLPerS,
        double roadSpeedMPerS,
        OptionalDouble payloadKg,
        OptionalDouble bucketKg,
        ExtractAt extractAt,
        String at,
        WorkHours hours)
        implements Machine {
    /** Of a full batch's time, where nothing is said: ours, no source. */
    private static final int USUAL_PART_OF_BATCH_TIME = 3;

    public Rig {
        if (!(drumL > 0 && batchCompostKg > 0 && nurseTankL > 0 && transferLPerS > 0 && roadSpeedMPerS > 0)
                || bucketKg.stream().anyMatch(kg -> !(kg > 0))
                || batchTimeS <= 0
                || leastBatchTime.orElse(1) <= 0
                || cleanTimeS < 0) {
            throw new IllegalArgumentException("rig " + id + " has a figure out of range");
        }
    }

    /** No batch takes less, s; never more than a full one. */
    public int leastBatchTimeS() {
        return Math.min(
                batchTimeS,
                leastBatchTime.orElse((batchTimeS + USUAL_PART_OF_BATCH_TIME - 1) / USUAL_PART_OF_BATCH_TIME));
    }

    /** A rig like this one, but for what is changed. */
    public RigChange change() {
        return new RigChange(this);
    }
}
