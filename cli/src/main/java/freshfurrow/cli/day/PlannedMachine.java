package freshfurrow.cli.day;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Work;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
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

    /** Rigs, then planters and sprayers that are not mounted on one, each in the season's order. */
    public static List<PlannedMachine> of(Plan plan) {
        LocalDateTime until = WorkDates.of(plan)
                .map(dates -> dates.last().plusDays(2).atStartOfDay())
                .orElse(LocalDateTime.MIN);
        return Stream.concat(
                        plan.rigs().entrySet().stream()
                                .map(rig -> new PlannedMachine(
                                        Kind.RIG,
                                        rig.getKey(),
                                        Idle.filled(withMounted(plan, rig.getKey(), rig.getValue()), until))),
                        plan.planters().entrySet().stream()
                                .filter(planter -> planter.getValue().on().isEmpty())
                                .map(planter -> new PlannedMachine(
                                        Kind.of(planter.getValue().work()),
                                        planter.getKey(),
                                        Idle.filled(planter.getValue().activities(), until))))
                .toList();
    }

    /** With what the sprayers do that are mounted on it, which its crew does; a fill of theirs is its own transfer. */
    private static List<Activity> withMounted(Plan plan, String rig, Plan.RigPlan own) {
        List<Activity> all = new ArrayList<>(own.activities());
        plan.planters().values().stream()
                .filter(planter -> planter.on().filter(rig::equals).isPresent())
                .flatMap(planter -> planter.activities().stream())
                .filter(activity -> !(activity instanceof Activity.Fill))
                .forEach(all::add);
        all.sort(Comparator.comparing(Activity::start));
        return all;
    }
}
