package freshfurrow.app.log;

import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A plan and the log of its season, as they stand.
 *
 * @param season as its files have it
 * @param plan that is followed; empty when there is none
 * @param now local time; empty when today is no day of the season
 */
public record DayOfWork(Season season, SeasonLog log, Optional<Plan> plan, Optional<LocalDateTime> now) {}
