package freshfurrow.cli.day;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Standing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * How much water and mix a rig has on board: what it began with and drew, less what it passed on or let out. What it sprays itself is on board
 * until it is sprayed.
 */
public final class NurseTank {
    private final double atStartL;
    /** What was on board when that had ended which ends by then. */
    private final NavigableMap<LocalDateTime, Double> litresFrom = new TreeMap<>();

    /** What is more on board when something has ended, L; less where it is below 0. */
    private record Change(LocalDateTime end, double litres) {}

    private NurseTank(double atStartL, List<Change> changes) {
        this.atStartL = atStartL;
        double litres = atStartL;
        for (Change change :
                changes.stream().sorted(Comparator.comparing(Change::end)).toList()) {
            litres += change.litres;
            litresFrom.put(change.end, litres);
        }
    }

    /**
     * The tank of a rig. It is empty when the season begins; when a plan begins later, it holds the water and the batches that it
     * has then.
     *
     * @throws IllegalArgumentException when the plan has no such rig
     */
    public static NurseTank of(Plan plan, String rig) {
        Plan.RigPlan planned = plan.rigs().get(rig);
        if (planned == null) {
            throw new IllegalArgumentException("the plan has no rig " + rig);
        }
        double atStartL =
                plan.start().stream().mapToDouble(start -> atStartL(start, rig)).sum();
        SprayedLoads sprayed = SprayedLoads.of(plan, rig);
        List<Change> changes = new ArrayList<>();
        planned.activities()
                .forEach(activity -> changes.add(
                        new Change(activity.end(), sprayed.isTransferOf(activity) ? 0 : activity.onRigL())));
        sprayed.pieces().forEach(piece -> changes.add(new Change(piece.end(), -piece.litres())));
        return new NurseTank(atStartL + sprayed.carriedL(), changes);
    }

    private static double atStartL(PlanStart start, String rig) {
        Standing.OfRig standing = start.standing().rigs().get(rig);
        if (standing == null) {
            return 0;
        }
        List<String> batches = standing.mix().map(Mix::batches).orElse(List.of());
        return standing.waterL()
                + start.batches().stream()
                        .filter(batch -> batches.contains(batch.id()))
                        .mapToDouble(Plan.Batch::waterL)
                        .sum();
    }

    /** Litres on board at a moment, by all that has ended by then; 0 or more. */
    public double litresAt(LocalDateTime moment) {
        Map.Entry<LocalDateTime, Double> last = litresFrom.floorEntry(moment);
        return Math.max(0, last == null ? atStartL : last.getValue());
    }

    /** The most litres on board at any time of a date. */
    public double mostLitresOn(LocalDate date) {
        LocalDateTime midnight = date.atStartOfDay();
        return litresFrom.subMap(midnight, false, date.plusDays(1).atStartOfDay(), true).values().stream()
                .mapToDouble(Double::doubleValue)
                .reduce(litresAt(midnight), Math::max);
    }
}
