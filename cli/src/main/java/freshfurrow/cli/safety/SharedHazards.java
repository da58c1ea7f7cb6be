package freshfurrow.cli.safety;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Hazards of several machines put together, so that each is told once. */
final class SharedHazards {
    private SharedHazards() {}

    /** Weights stay apart, a machine each, and so do clock changes; of all else there is one, in the order of what comes first. */
    static List<Hazard> of(List<Hazard> hazards) {
        Map<Object, Hazard> shared = new LinkedHashMap<>();
        hazards.forEach(hazard -> shared.merge(subject(hazard), hazard, SharedHazards::both));
        return new ArrayList<>(shared.values());
    }

    /** Hazards with the same are one. */
    private static Object subject(Hazard hazard) {
        if (hazard instanceof Hazard.LoadedRig || hazard instanceof Hazard.ClockChange) {
            return hazard;
        }
        if (hazard instanceof Hazard.Lifting lifting) {
            return lifting.bucketKg();
        }
        if (hazard instanceof Hazard.PartFilledTank) {
            return Hazard.OnTheRoad.class;
        }
        return hazard.getClass();
    }

    private static Hazard both(Hazard a, Hazard b) {
        if (a instanceof Hazard.PartFilledTank one && b instanceof Hazard.PartFilledTank other) {
            Set<LocalDateTime> starts = new TreeSet<>(one.starts());
            starts.addAll(other.starts());
            return new Hazard.PartFilledTank(new ArrayList<>(starts));
        }
        if (a instanceof Hazard.Backflow one && b instanceof Hazard.Backflow other) {
            Set<String> points = new LinkedHashSet<>(one.waterPoints());
            points.addAll(other.waterPoints());
            return new Hazard.Backflow(new ArrayList<>(points));
        }
        if (a instanceof Hazard.Lifting one && b instanceof Hazard.Lifting other) {
            return new Hazard.Lifting(one.bucketKg(), one.compostKg() + other.compostKg());
        }
        // a part-filled tank says more than that there are drives
        return b instanceof Hazard.PartFilledTank ? b : a;
    }
}
