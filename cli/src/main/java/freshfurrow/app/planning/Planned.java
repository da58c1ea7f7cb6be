package freshfurrow.app.planning;

import freshfurrow.app.output.PageOutcome;
import freshfurrow.app.time.TimeTaken;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.nio.file.Path;

/**
 * A season that was planned.
 *
 * @param file that the plan is written to
 */
public record Planned(Season season, Plan plan, Path file, PageOutcome page, PlanningEnd end, TimeTaken taken) {}
