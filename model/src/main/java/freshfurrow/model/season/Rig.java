package freshfurrow.model.season;

import java.util.OptionalDouble;

/**
 * An extraction rig: drum, strainer and pump with a nurse tank of water.
 *
 * @param drumL water in a full batch, L, above 0
 * @param batchCompostKg compost in a full batch, kg, above 0
 * @param batchTimeS to extract a full batch, s, above 0
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
    public Rig {
        if (!(drumL > 0 && batchCompostKg > 0 && nurseTankL > 0 && transferLPerS > 0 && roadSpeedMPerS > 0)
                || bucketKg.stream().anyMatch(kg -> !(kg > 0))
                || batchTimeS <= 0
                || cleanTimeS < 0) {
            throw new IllegalArgumentException("rig " + id + " has a figure out of range");
        }
    }

    /** A rig like this one, but for what is changed. */
    public RigChange change() {
        return new RigChange(this);
    }
}
