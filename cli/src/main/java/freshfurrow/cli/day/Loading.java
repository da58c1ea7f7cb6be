package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a rig has to have on board for a day.
 *
 * @param kgByLot compost of the day's batches
 * @param bucketKg compost in a full bucket, where known
 * @param onBoardL water and mix in its tank when the day begins, L
 * @param drawL water to draw on the day, L
 * @param draws how often
 */
public record Loading(Map<String, Double> kgByLot, OptionalDouble bucketKg, double onBoardL, double drawL, int draws) {
    public Loading {
        kgByLot = Collections.unmodifiableMap(new LinkedHashMap<>(kgByLot));
    }

    /**
     * That of a rig on a day.
     *
     * @throws IllegalArgumentException when the plan has no such rig, or not one of its batches
     */
    public static Loading of(MachineDay day, PlanIndex index) {
        Plan.RigPlan rig = index.plan().rigs().get(day.machine().id());
        if (rig == null) {
            throw new IllegalArgumentException(
                    "the plan has no rig " + day.machine().id());
        }
        Map<String, Double> kgByLot = new LinkedHashMap<>();
        day.each(Activity.Extract.class)
                .forEach(extract ->
                        index.batch(extract.batch()).lots().forEach((lot, kg) -> kgByLot.merge(lot, kg, Double::sum)));
        return new Loading(
                kgByLot,
                rig.bucketKg(),
                index.nurseTank(day.machine().id()).litresAt(day.date().atStartOfDay()),
                day.each(Activity.Draw.class).stream()
                        .mapToDouble(Activity.Draw::litres)
                        .sum(),
                day.each(Activity.Draw.class).size());
    }

    /** Whether the day's work begins with an empty tank and ends without compost, so that there is nothing to load. */
    public boolean isNothing() {
        return kgByLot.isEmpty() && draws == 0 && onBoardL < 1;
    }
}
