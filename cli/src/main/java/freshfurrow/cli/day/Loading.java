package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a rig has to have on board for a day.
 *
 * @param kgByLot compost of the day's batches, which is to be on board; where the rig fetches compost, what is on board when the day begins
 * @param fetched the loadings of the day, where the rig fetches compost
 * @param bucketKg compost in a full bucket, where known
 * @param onBoardL water and mix in its tank when the day begins, L
 * @param drawL water to draw on the day, L
 * @param draws how often
 */
public record Loading(
        Map<String, Double> kgByLot,
        Optional<List<Activity.LoadCompost>> fetched,
        OptionalDouble bucketKg,
        double onBoardL,
        double drawL,
        int draws) {
    public Loading {
        fetched = fetched.map(List::copyOf);
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
        CompostHold hold = index.compostHold(day.machine().id());
        return new Loading(
                hold.isUsed() ? hold.kgByLotAt(day.date().atStartOfDay()) : batches(day, index),
                hold.isUsed() ? Optional.of(day.each(Activity.LoadCompost.class)) : Optional.empty(),
                rig.bucketKg(),
                index.nurseTank(day.machine().id()).litresAt(day.date().atStartOfDay()),
                day.each(Activity.Draw.class).stream()
                        .mapToDouble(Activity.Draw::litres)
                        .sum(),
                day.each(Activity.Draw.class).size());
    }

    private static Map<String, Double> batches(MachineDay day, PlanIndex index) {
        Map<String, Double> kgByLot = new LinkedHashMap<>();
        day.each(Activity.Extract.class)
                .forEach(extract ->
                        index.batch(extract.batch()).lots().forEach((lot, kg) -> kgByLot.merge(lot, kg, Double::sum)));
        return kgByLot;
    }

    /** Whether compost is handled on the day. */
    public boolean isOfCompost() {
        return !kgByLot.isEmpty()
                || fetched.filter(loadings -> !loadings.isEmpty()).isPresent();
    }

    /** Whether the day's work begins with an empty tank and ends without compost, so that there is nothing to load. */
    public boolean isNothing() {
        return !isOfCompost() && draws == 0 && onBoardL < 1;
    }
}
