package freshfurrow.app.planning;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.List;
import java.util.Optional;

/**
 * A plan that is made and audited, and not yet written.
 *
 * @param season what it plans: the whole season, or what is left of it
 * @param text of its file
 * @param page of it; empty when planning was told to stop and there was no time for it
 * @param changes what it changes of the plan that was followed, a line each; none for a plan of the whole season
 * @param moment from when on it plans; empty for a plan of the whole season
 */
public record ProposedPlan(
        Season season,
        Plan plan,
        String text,
        Optional<String> page,
        List<String> changes,
        PlanningEnd end,
        Optional<PlanningMoment> moment) {
    public ProposedPlan {
        changes = List.copyOf(changes);
    }
}
