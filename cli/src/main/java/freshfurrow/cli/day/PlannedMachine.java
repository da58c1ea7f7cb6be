package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Work;
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
        PLANTER,
        SPRAYER;

        static Kind of(Work work) {
            return switch (work) {
                case PLANT -> PLANTER;
                case SPRAY -> SPRAYER;
            };
        }

        /** Whether it fills others, and is not filled. */
        public boolean isRig() {
            return this == RIG;
        }
    }

    public PlannedMachine {
        activities = List.copyOf(activities);
    }

    /** Rigs, then planters and sprayers, each in the season's order. */
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
                                        Kind.of(planter.getValue().work()),
                                        planter.getKey(),
                                        Idle.filled(planter.getValue().activities(), until))))
                .toList();
    }
}
