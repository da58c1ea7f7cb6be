package freshfurrow.model.progress;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.LogSums;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a plan says was done up to some moment, as facts for the log: water drawn, batches and plantings that end by then, and of planting
 * that goes on the share by time. What the log has already is not said again: {@link AlreadyLogged}.
 */
public final class AsPlanned {
    /** Less is rounding of lines that are there. */
    private static final double LEAST_HA = 0.001;

    private final Plan plan;
    private final LocalDateTime until;
    private final Set<String> except;
    private final PlannedLoads loads;
    private final AlreadyLogged logged;
    private final Map<String, Double> leftHa = new HashMap<>();
    private final List<Done> done = new ArrayList<>();

    private AsPlanned(Season whole, Plan plan, SeasonLog log, LocalDateTime until, Set<String> except) {
        this.plan = plan;
        this.until = until;
        this.except = except;
        loads = new PlannedLoads(plan);
        LocalDateTime begins = plan.start().map(PlanStart::now).orElse(LocalDateTime.MIN);
        List<Entry> since = log.standing().stream()
                .filter(entry -> entry.at().isAfter(begins))
                .toList();
        logged = new AlreadyLogged(plan, loads, since);
        LogSums.of(whole, log).fields().forEach((id, area) -> leftHa.put(id, area.fieldHa() - area.plantedHa()));
    }

    /** Something that was done, and when it ended. */
    public record Done(LocalDateTime at, Fact fact) {}

    /**
     * The facts that the log lacks, by time.
     *
     * @param whole the season as its file tells it
     * @param except ids of fields of which no planting, and of machines of which no work, is meant
     */
    public static List<Done> facts(Season whole, Plan plan, SeasonLog log, LocalDateTime until, Set<String> except) {
        return new AsPlanned(whole, plan, log, until, except).facts();
    }

    private List<Done> facts() {
        plan.rigs().forEach((id, rig) -> {
            if (!except.contains(id)) {
                rig.activities().stream()
                        .filter(activity -> !activity.end().isAfter(until))
                        .forEach(activity -> rigWork(id, activity));
            }
        });
        plan.planters().forEach((id, planter) -> {
            if (!except.contains(id)) {
                planter.activities().forEach(activity -> planterWork(id, activity));
            }
        });
        done.sort(Comparator.comparing(Done::at));
        return List.copyOf(done);
    }

    private void rigWork(String rig, Activity activity) {
        if (logged.has(activity)) {
            return;
        }
        loads.rigFact(rig, activity).ifPresent(fact -> done.add(new Done(activity.end(), fact)));
    }

    private void planterWork(String planter, Activity activity) {
        if (activity instanceof Activity.Planting plant
                && plant.start().isBefore(until)
                && !except.contains(plant.field())) {
            double left = leftHa.getOrDefault(plant.field(), 0.0);
            double ha = Math.min(PlanterSoFar.plantedHa(plant, until) - logged.plantedHa(plant), left);
            if (ha >= LEAST_HA) {
                leftHa.put(plant.field(), left - ha);
                done.add(new Done(
                        plant.end().isAfter(until) ? until : plant.end(), PlannedLoads.planted(planter, plant, ha)));
            }
        }
    }
}
