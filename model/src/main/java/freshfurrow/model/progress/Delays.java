package freshfurrow.model.progress;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Standing;
import freshfurrow.model.timeline.HoursOfWork;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Machines that are behind a plan. What the plan says of one by some moment is taken as done once it has worked for so long more; until
 * then it begins nothing else.
 */
final class Delays {
    private final Plan plan;
    private final LocalDateTime until;
    private final Set<String> loggedFields;

    /**
     * Delays of a plan that was followed until some moment.
     *
     * @param loggedFields ids of fields whose area comes from the log
     */
    Delays(Plan plan, LocalDateTime until, Set<String> loggedFields) {
        this.plan = plan;
        this.until = until;
        this.loggedFields = loggedFields;
    }

    /** Those that count: a planter in a field of which the log has the area is as far as that says. */
    Map<String, Duration> of(Map<String, Duration> said) {
        Map<String, Duration> delays = new LinkedHashMap<>();
        said.forEach((machine, by) -> {
            if (!isInLoggedField(machine)) {
                delays.put(machine, by);
            }
        });
        return delays;
    }

    private boolean isInLoggedField(String machine) {
        Plan.PlanterPlan planter = plan.planters().get(machine);
        return planter != null
                && planter.activities().stream()
                        .filter(activity -> activity.start().isBefore(until))
                        .flatMap(activity ->
                                activity instanceof Activity.Planting plant ? Stream.of(plant.field()) : Stream.empty())
                        .reduce((before, after) -> after)
                        .filter(loggedFields::contains)
                        .isPresent();
    }

    /** A standing in which these machines are free so much of their working time later. */
    static Standing added(Season season, Standing standing, Map<String, Duration> delays) {
        if (delays.isEmpty()) {
            return standing;
        }
        Map<String, Standing.OfPlanter> planters = new LinkedHashMap<>(standing.planters());
        planters.replaceAll((id, planter) ->
                planter.withFreeFrom(later(season, season.applicator(id), planter.freeFrom(), delays)));
        Map<String, Standing.OfRig> rigs = new LinkedHashMap<>(standing.rigs());
        rigs.replaceAll((id, rig) -> rig.withFreeFrom(later(season, season.rig(id), rig.freeFrom(), delays)));
        return standing.withMachines(planters, rigs);
    }

    private static LocalDateTime later(
            Season season, Machine machine, LocalDateTime freeFrom, Map<String, Duration> delays) {
        Duration delay = delays.get(machine.id());
        return delay == null ? freeFrom : HoursOfWork.after(season, machine, freeFrom, delay);
    }
}
