package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * What is still to be applied of a load at a moment.
 *
 * @param litres in the planter's tank
 * @param areaHa that it is meant for
 */
public record OnBoard(Plan.Load load, double litres, double areaHa) {

    /** What a planter has in its tank at a moment; empty when that is nothing. */
    public static Optional<OnBoard> at(Plan plan, String planter, LocalDateTime moment) {
        return plan.loads().stream()
                .filter(load -> load.planter().equals(planter))
                .filter(load -> load.lastDrop().isAfter(moment) && filledBefore(plan, load, moment))
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
        return planter(plan, load).activities().stream()
                .filter(activity -> !activity.start().isBefore(moment))
                .filter(activity -> activity instanceof Activity.Plant planting
                        && planting.load().equals(load.id()))
                .mapToDouble(activity -> ((Activity.Plant) activity).areaHa())
                .sum();
    }

    private static boolean filledBefore(Plan plan, Plan.Load load, LocalDateTime moment) {
        return planter(plan, load).activities().stream()
                .anyMatch(activity -> activity instanceof Activity.Fill fill
                        && fill.load().equals(load.id())
                        && fill.end().isBefore(moment));
    }

    private static Plan.PlanterPlan planter(Plan plan, Plan.Load load) {
        Plan.PlanterPlan planter = plan.planters().get(load.planter());
        if (planter == null) {
            throw new IllegalArgumentException("load " + load.id() + " is for a planter that the plan does not have");
        }
        return planter;
    }
}
