package freshfurrow.app.trial;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.List;

/**
 * What came of a trial.
 *
 * @param season with the days that were asked for
 * @param plan that comes of the lists
 * @param moved fields that are begun on another day or by another machine than in the plan that is followed, by that day
 */
public record Tried(Season season, Plan plan, List<Moved> moved) {
    public Tried {
        moved = List.copyOf(moved);
    }
}
