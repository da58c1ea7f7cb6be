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
 */
record OpenedPlan(Path file, Plan plan, Season season) {
    /** @throws Refused when plan or season cannot be read, or the one is not of the other */
    static OpenedPlan of(GivenPlan given, SeasonOfPlan season) {
        Path file = given.file();
        Plan plan = given.read();
        return new OpenedPlan(file, plan, season.read(file, plan));
    }
}
