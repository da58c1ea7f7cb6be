package freshfurrow.app.input;

import freshfurrow.app.refusal.InputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import java.nio.file.Path;

/** Whether a plan was made from a season, with its variants, as it is read now. */
public final class PlanOrigin {
    private PlanOrigin() {}

    public static boolean isOf(Reading.Valid season, Plan plan) {
        return season.sha256().equals(plan.season().sha256());
    }

    /**
     * Lets a plan pass that was made from the season.
     *
     * @throws Refused when it was made from something else
     */
    public static void mustBeOf(Reading.Valid season, Path planFile, Plan plan) {
        if (!isOf(season, plan)) {
            throw new Refused(new InputRefusal.PlanOfAnotherSeason(planFile, season.file()));
        }
    }
}
