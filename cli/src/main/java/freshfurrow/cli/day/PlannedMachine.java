package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;

/**
 * A machine of a plan.
 *
 * @param activities all of its season, in time order; where the plan has nothing for it for long, it waits
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
        LocalDateTime until = WorkDates.of(plan)
                .map(dates -> dates.last().plusDays(2).atStartOfDay())
                .orElse(LocalDateTime.MIN);
        return Stream.concat(
                        plan.rigs().entrySet().stream()
                                .map(rig -> new PlannedMachine(
                                        Kind.RIG,
                                        rig.getKey(),
                                        Idle.filled(rig.getValue().activities(), until))),
                        plan.planters().entrySet().stream()
                                .map(planter -> new PlannedMachine(
                                        Kind.PLANTER,
                                        planter.getKey(),
                                        Idle.filled(planter.getValue().activities(), until))))
                .toList();
    }
}
