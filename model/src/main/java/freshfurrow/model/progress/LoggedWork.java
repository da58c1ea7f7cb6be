package freshfurrow.model.progress;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** The work of a plan, piece by piece, held against the log. */
public final class LoggedWork {
    /** Of a planting less may be missing, as lines have rounded areas, ha. */
    private static final double ROUNDING_HA = 0.03;

    private final PlannedLoads loads;
    private final AlreadyLogged logged;

    private LoggedWork(PlannedLoads loads, AlreadyLogged logged) {
        this.loads = loads;
        this.logged = logged;
    }

    public static LoggedWork of(Plan plan, SeasonLog log) {
        LocalDateTime begins = plan.start().map(PlanStart::now).orElse(LocalDateTime.MIN);
        List<Entry> since = log.standing().stream()
                .filter(entry -> entry.at().isAfter(begins))
                .toList();
        PlannedLoads loads = new PlannedLoads(plan);
        return new LoggedWork(loads, new AlreadyLogged(plan, loads, since));
    }

    /** What the log is to say when it is done as planned; empty for what is not logged, as driving. */
    public Optional<Fact> asPlanned(String machine, Activity activity) {
        return activity instanceof Activity.Planting planting
                ? Optional.of(PlannedLoads.planted(machine, planting, planting.areaHa()))
                : loads.rigFact(machine, activity);
    }

    /** Whether lines of the log stand for all of it. */
    public boolean has(Activity activity) {
        return activity instanceof Activity.Planting planting
                ? logged.plantedHa(planting) >= planting.areaHa() - Math.min(ROUNDING_HA, planting.areaHa() / 2)
                : logged.has(activity);
    }
}
