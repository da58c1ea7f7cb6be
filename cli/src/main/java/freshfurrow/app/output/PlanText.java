package freshfurrow.app.output;

import freshfurrow.cli.command.Refusal;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;

/** A plan as it goes into its file. */
public final class PlanText {
    private PlanText() {}

    /** @throws Refusal when nothing could read the file again */
    public static String of(Plan plan) {
        String text = PlanFile.toJson(plan);
        if (!PlanFile.isReadable(text)) {
            throw new Refusal("The plan has " + text.length() / 1_000_000
                    + " MB, too many to be read again, so it is not written; plan the season as several,"
                    + " by the machines that work there.");
        }
        return text;
    }
}
