package freshfurrow.solver.lived;

import freshfurrow.model.compare.SpringFigures;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanStart;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import java.util.List;

/**
 * A spring as it was lived.
 *
 * @param figures what it came to
 * @param waterL drawn by rigs, L
 * @param overtimeH planted past the last hours of days, h
 * @param parts what was played from one piece of news to the next
 * @param done what had been planted and used by the end of the season
 */
record LivedSpring(SpringFigures figures, double waterL, double overtimeH, List<Part> parts, PlanStart done) {
    LivedSpring {
        parts = List.copyOf(parts);
    }

    /** What it came to, with what that costs. */
    SpringFigures at(Costs costs) {
        return figures.at(costs, waterL, overtimeH);
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
