package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Standing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** How much compost a rig has on board, where rigs fetch it: what it began with and loaded, less what its batches took. */
public final class CompostHold {
    /** Less is rounding. */
    private static final double LEAST_KG = 0.001;

    private final boolean used;
    /** What was on board when that had ended which ends by then, kg by lot. */
    private final NavigableMap<LocalDateTime, Map<String, Double>> kgByLotFrom = new TreeMap<>();

    private CompostHold(boolean used) {
        this.used = used;
    }

    /**
     * That of a rig; empty where no rig of the plan fetches compost.
     *
     * @throws IllegalArgumentException when the plan has no such rig
     */
    static CompostHold of(Plan plan, String rig) {
        Plan.RigPlan planned = plan.rigs().get(rig);
        if (planned == null) {
            throw new IllegalArgumentException("the plan has no rig " + rig);
        }
        Map<String, Double> onBoard = new LinkedHashMap<>(plan.start()
                .flatMap(start -> Optional.ofNullable(start.standing().rigs().get(rig)))
                .map(Standing.OfRig::compostKg)
                .orElse(Map.of()));
        boolean loads = planned.activities().stream().anyMatch(Activity.LoadCompost.class::isInstance);
        CompostHold hold = new CompostHold(loads || !onBoard.isEmpty());
        if (hold.used) {
            hold.kgByLotFrom.put(LocalDateTime.MIN, Map.copyOf(onBoard));
            Map<String, Plan.Batch> batches = new HashMap<>();
            plan.batches().forEach(batch -> batches.put(batch.id(), batch));
            planned.activities().stream()
                    .sorted(Comparator.comparing(Activity::end))
                    .forEach(activity -> hold.follow(activity, onBoard, batches));
        }
        return hold;
    }

    private void follow(Activity activity, Map<String, Double> onBoard, Map<String, Plan.Batch> batches) {
        if (activity instanceof Activity.LoadCompost loading) {
            onBoard.merge(loading.lot(), loading.kg(), Double::sum);
        } else if (activity instanceof Activity.Extract extract && batches.containsKey(extract.batch())) {
            batches.get(extract.batch()).lots().forEach((lot, kg) -> onBoard.merge(lot, -kg, Double::sum));
            onBoard.values().removeIf(kg -> kg < LEAST_KG);
        } else {
            return;
        }
        kgByLotFrom.put(activity.end(), new LinkedHashMap<>(onBoard));
    }

    /** Whether the rig fetches compost. */
    public boolean isUsed() {
        return used;
    }

    /** Kilograms by lot at a moment, by all that has ended by then. */
    public Map<String, Double> kgByLotAt(LocalDateTime moment) {
        Map.Entry<LocalDateTime, Map<String, Double>> last = kgByLotFrom.floorEntry(moment);
        return last == null ? Map.of() : last.getValue();
    }

    /** The most on board at any time of a date, kg. */
    public double mostKgOn(LocalDate date) {
        LocalDateTime midnight = date.atStartOfDay();
        return kgByLotFrom.subMap(midnight, false, midnight.plusDays(1), true).values().stream()
                .mapToDouble(CompostHold::sum)
                .reduce(sum(kgByLotAt(midnight)), Math::max);
    }

    private static double sum(Map<String, Double> kgByLot) {
        return kgByLot.values().stream().mapToDouble(kg -> kg).sum();
    }
}
