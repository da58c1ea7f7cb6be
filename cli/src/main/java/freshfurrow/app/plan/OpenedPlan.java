package freshfurrow.app.plan;

import freshfurrow.app.input.GivenPlan;
import freshfurrow.app.input.SeasonOfPlan;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.nio.file.Path;

/**
 * A plan with what was left of its season when it was made.
 *
 * @param file that the plan was read from
 * @param whole the season
 */
record OpenedPlan(Path file, Plan plan, Season whole, Season season) {
    /** @throws Refused when plan or season cannot be read, or the one is not of the other */
    static OpenedPlan of(GivenPlan given, SeasonOfPlan season) {
        Path file = given.file();
        Plan plan = given.read();
        Season whole = season.readWhole(file, plan);
        return new OpenedPlan(file, plan, whole, SeasonOfPlan.checked(file, plan, whole));
    }
}
