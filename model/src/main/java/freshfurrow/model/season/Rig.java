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
 * @param setUpS to set up before the first work of a day, s, 0 or more
 * @param closeUpS to close up after the last work of a day, s, 0 or more
 * @param nurseTankL L, above 0
 * @param transferLPerS rate of pumping into a planter, L/s, above 0
 * @param roadSpeedMPerS m/s, above 0
 * @param payloadKg what the vehicle may carry, kg, where known; a caution, and a limit to the compost on board where its empty weight is known
 * @param emptyWeightKg what the vehicle carries at all times, tanks, drum and pump, kg, 0 or more, where known
 * @param compostLoad the most compost on board, kg, above 0; empty for that of ten full batches
 * @param compostLoadingMinPerKg to load compost where it lies, min/kg, above 0
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
        int setUpS,
        int closeUpS,
        double nurseTankL,
        double transferLPerS,
        double roadSpeedMPerS,
        OptionalDouble payloadKg,
        OptionalDouble emptyWeightKg,
        OptionalDouble compostLoad,
        double compostLoadingMinPerKg,
        OptionalDouble bucketKg,
        ExtractAt extractAt,
        String at,
        WorkHours hours)
        implements Machine {
    /** Of a full batch's time, where nothing is said: ours, no source. */
    private static final int USUAL_PART_OF_BATCH_TIME = 3;
    /** Whose compost is on board at the most, where nothing is said: ours, no source. */
    private static final int USUAL_BATCHES_ON_BOARD = 10;
    /** Where nothing is said: ours, no source. */
    public static final double USUAL_LOADING_MIN_PER_KG = 0.1;

    private static final double WATER_KG_PER_L = 1;

    public Rig {
        if (!(drumL > 0 && batchCompostKg > 0 && nurseTankL > 0 && transferLPerS > 0 && roadSpeedMPerS > 0)
                || bucketKg.stream().anyMatch(kg -> !(kg > 0))
                || emptyWeightKg.stream().anyMatch(kg -> !(kg >= 0))
                || compostLoad.stream().anyMatch(kg -> !(kg > 0))
                || !(compostLoadingMinPerKg > 0)
                || batchTimeS <= 0
                || leastBatchTime.orElse(1) <= 0
                || cleanTimeS < 0
                || setUpS < 0
                || closeUpS < 0) {
            throw new IllegalArgumentException("rig " + id + " has a figure out of range");
        }
    }

    /** No batch takes less, s; never more than a full one. */
    public int leastBatchTimeS() {
        return Math.min(
                batchTimeS,
                leastBatchTime.orElse((batchTimeS + USUAL_PART_OF_BATCH_TIME - 1) / USUAL_PART_OF_BATCH_TIME));
    }

    /** The compost that it holds, kg. */
    public double compostLoadKg() {
        return compostLoad.orElse(USUAL_BATCHES_ON_BOARD * batchCompostKg);
    }

    /**
     * The most compost on board, kg: what it holds, and no more than its payload leaves beside its empty weight and a full nurse tank, where
     * both are known; below 0 where they leave nothing.
     */
    public double mostCompostKg() {
        double holds = compostLoadKg();
        return payloadKg.isPresent() && emptyWeightKg.isPresent()
                ? Math.min(holds, payloadKg.getAsDouble() - emptyWeightKg.getAsDouble() - nurseTankL * WATER_KG_PER_L)
                : holds;
    }

    @Override
    public KeptTime kept() {
        return new KeptTime(setUpS, closeUpS);
    }

    /** A rig like this one, but for what is changed. */
    public RigChange change() {
        return new RigChange(this);
    }
}
