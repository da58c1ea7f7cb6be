package freshfurrow.app.input;

import freshfurrow.cli.command.Refusal;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import java.nio.file.Path;
import java.util.Optional;

/** Whether a plan was made from a season, with its variants, as it is read now. */
public final class PlanOrigin {
    private PlanOrigin() {}

    public static boolean isOf(Reading.Valid season, Plan plan) {
        return season.sha256().equals(plan.season().sha256());
    }

    /** What a plan was made from instead, as the end of a sentence that begins with the plan; empty when it is of that season. */
    public static Optional<String> otherThan(Reading.Valid season, Plan plan) {
        if (isOf(season, plan)) {
            return Optional.empty();
        }
        String now = season.season().name();
        String then = plan.season().name();
        return Optional.of(
                now.equals(then)
                        ? "was made from " + plan.season().file() + " with other content or other variants than '" + now
                                + "' has now (its checksum is another)"
                        : "is a plan of '" + then + "', not of '" + now + "' (its checksum is another too)");
    }

    /** @throws Refusal when the plan was made from something else */
    public static void mustBeOf(Reading.Valid season, Path planFile, Plan plan) {
        if (!isOf(season, plan)) {
            throw new Refusal(planFile + ": this is no plan of " + season.file()
                    + " as it is now (its checksum is another); name the plan that was made from it, or its variants with"
                    + " --variant FILE, or plan anew with 'freshfurrow plan'");
        }
    }
}
