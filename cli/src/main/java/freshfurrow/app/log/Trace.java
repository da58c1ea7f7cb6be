package freshfurrow.app.log;

import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.Optional;

/** Where compost came from and went: what the log says, and what it leaves out and the plan has. */
public record Trace(Season season, SeasonLog log, Optional<Plan> plan) {}
