package freshfurrow.app.output;

import freshfurrow.app.refusal.OutputRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.PlanFile;

/** A plan as it goes into its file. */
public final class PlanText {
    private PlanText() {}

    /**
     * The text of its file.
     *
     * @throws Refused when nothing could read the file again
     */
    public static String of(Plan plan) {
        String text = PlanFile.toJson(plan);
        if (!PlanFile.isReadable(text)) {
            throw new Refused(new OutputRefusal.PlanTooLarge(text.length() / 1_000_000));
        }
        return text;
    }
}
