package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.List;
import java.util.stream.Stream;

/**
 * A machine of a plan.
 *
 * @param activities all of its season, in time order
 */
public record PlannedMachine(Kind kind, String id, List<Activity> activities) {
    public enum Kind {
        RIG,
        PLANTER
    }

    public PlannedMachine {
        activities = List.copyOf(activities);
    }

    /** Rigs, then planters, each in the season's order. */
    public static List<PlannedMachine> of(Plan plan) {
        return Stream.concat(
                        plan.rigs().entrySet().stream()
                                .map(rig -> new PlannedMachine(
                                        Kind.RIG, rig.getKey(), rig.getValue().activities())),
                        plan.planters().entrySet().stream()
                                .map(planter -> new PlannedMachine(
                                        Kind.PLANTER,
                                        planter.getKey(),
                                        planter.getValue().activities())))
                .toList();
    }
}
