package freshfurrow.solver.lived;

import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Season;
import java.util.List;

/**
 * A spring as it was lived.
 *
 * @param figures what it came to
 * @param parts what was played from one piece of news to the next
 * @param done what had been planted and used by the end of the season
 */
record LivedSpring(SpringFigures figures, List<Part> parts, PlanStart done) {
    LivedSpring {
        parts = List.copyOf(parts);
    }

    /**
     * What was done from one piece of news to the next.
     *
     * @param season what was left of it, with the ground as far as it was known
     * @param plan of which only what begins before {@code untilS} was done
     * @param fromS s since the season's first midnight
     * @param untilS s since the season's first midnight
     */
    record Part(Season season, Plan plan, int fromS, int untilS) {}
}
