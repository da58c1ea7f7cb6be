package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is still to be applied of a load at a moment.
 *
 * @param litres in the planter's tank
 * @param areaHa that it is meant for
 */
public record OnBoard(Plan.Load load, double litres, double areaHa) {

    /** What a planter has in its tank at a moment; empty when that is nothing. */
    public static Optional<OnBoard> at(Plan plan, String planter, LocalDateTime moment) {
        Set<String> filled = new HashSet<>();
        Set<String> stillToPlant = new HashSet<>();
        for (Activity activity : activities(plan, planter)) {
            if (activity instanceof Activity.Fill fill && fill.end().isBefore(moment)) {
                filled.add(fill.load());
            } else if (activity instanceof Activity.Plant planting
                    && !planting.start().isBefore(moment)) {
                stillToPlant.add(planting.load());
            }
        }
        stillToPlant.retainAll(filled);
        if (stillToPlant.isEmpty()) {
            return Optional.empty();
        }
        return plan.loads().stream()
                .filter(load -> stillToPlant.contains(load.id()))
                .filter(load ->
                        load.planter().equals(planter) && load.lastDrop().isAfter(moment))
                .map(load -> rest(plan, load, moment))
                .filter(rest -> rest.areaHa > 0)
                .findFirst();
    }

    /** The whole area that a load is meant for, ha. */
    public static double wholeAreaHa(Plan plan, Plan.Load load) {
        return areaHaFrom(plan, load, LocalDateTime.MIN);
    }

    private static OnBoard rest(Plan plan, Plan.Load load, LocalDateTime moment) {
        double areaHa = areaHaFrom(plan, load, moment);
        return new OnBoard(load, load.appliedL() * areaHa / wholeAreaHa(plan, load), areaHa);
    }

    private static double areaHaFrom(Plan plan, Plan.Load load, LocalDateTime moment) {
        return activities(plan, load.planter()).stream()
                .filter(activity -> !activity.start().isBefore(moment))
                .filter(activity -> activity instanceof Activity.Plant planting
                        && planting.load().equals(load.id()))
                .mapToDouble(activity -> ((Activity.Plant) activity).areaHa())
                .sum();
    }

    private static List<Activity> activities(Plan plan, String planter) {
        Plan.PlanterPlan planned = plan.planters().get(planter);
        if (planned == null) {
            throw new IllegalArgumentException("the plan has no planter " + planter);
        }
        return planned.activities();
    }
}
