package freshfurrow.app.planning;

import freshfurrow.app.output.PageOutcome;
import freshfurrow.app.time.TimeTaken;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.progress.SoFar;
import freshfurrow.model.season.Season;
import java.nio.file.Path;
import java.util.List;

/**
 * A season that was planned again.
 *
 * @param whole the season as its file has it
 * @param soFar what counts as carried out
 * @param moment from when on was planned
 * @param plan of what is left
 * @param changes what it changes of the plan that was followed, as its page tells it, a line each
 * @param file that holds the newest plan, which is this one
 * @param kept that holds this plan, and will
 */
public record Replanned(
        Season whole,
        SoFar.Result soFar,
        PlanningMoment moment,
        Plan plan,
        List<String> changes,
        Path file,
        Path kept,
        PageOutcome page,
        PlanningEnd end,
        TimeTaken taken) {}
