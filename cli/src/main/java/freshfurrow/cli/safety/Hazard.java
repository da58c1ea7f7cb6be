package freshfurrow.cli.safety;

import freshfurrow.model.season.ClockChanges;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;

/** Something in a day's work that can hurt someone. */
public sealed interface Hazard {
    /** Whether figures of the plan are over a limit, so that it has to be dealt with before the work begins. */
    default boolean isOverLimit() {
        return false;
    }

    /**
     * A rig that carries much.
     *
     * @param rig its id
     * @param waterL the most water and mix on board on the day
     * @param waterKg its mass, see {@link Water}
     * @param compostKg of all of the day's batches, should it ride along
     * @param payloadKg what the vehicle may carry, where known; vehicle, tanks, pump, fuel and people are in neither
     */
    record LoadedRig(String rig, double waterL, double waterKg, double compostKg, OptionalDouble payloadKg)
            implements Hazard {
        public double loadKg() {
            return waterKg + compostKg;
        }

        @Override
        public boolean isOverLimit() {
            return payloadKg.isPresent() && loadKg() > payloadKg.getAsDouble();
        }
    }

    /**
     * Drives with a tank that is neither full nor empty, so that it surges.
     *
     * @param starts of those drives, in time order
     */
    record PartFilledTank(List<LocalDateTime> starts) implements Hazard {
        public PartFilledTank {
            starts = List.copyOf(starts);
        }
    }

    /** Drives of a heavy or wide machine. */
    record OnTheRoad() implements Hazard {}

    /** Water drawn at these points, or at any when none is named, into which nothing may run back. */
    record Backflow(List<String> waterPoints) implements Hazard {
        public Backflow {
            waterPoints = List.copyOf(waterPoints);
        }
    }

    /**
     * Compost lifted by hand.
     *
     * @param bucketKg of a full bucket, where known
     * @param compostKg of the day
     */
    record Lifting(OptionalDouble bucketKg, double compostKg) implements Hazard {
        @Override
        public boolean isOverLimit() {
            return bucketKg.isPresent() && Lift.isOverAnyLimit(bucketKg.getAsDouble());
        }
    }

    /** Compost dust and extract mist, which carry microbes. */
    record DustAndMist() implements Hazard {}

    /** Pumps and hoses that hold pressure. */
    record Pressure() implements Hazard {}

    /** Mist that drifts, and ground that people or animals come back to. */
    record Spraying() implements Hazard {}

    /** Clocks that are changed while mix gets old. */
    record ClockChange(ClockChanges.Change change) implements Hazard {}

    /** Mix that gets old, the sooner the hotter the day. */
    record OldMix() implements Hazard {}

    /** A crop that people eat. */
    record FoodCrop() implements Hazard {}
}
