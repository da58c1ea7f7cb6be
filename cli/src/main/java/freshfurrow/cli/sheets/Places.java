package freshfurrow.cli.sheets;

import freshfurrow.model.plan.Activity;

/** Where machines are. */
final class Places {
    private Places() {}

    /** The place at which an activity ends. */
    static String after(Activity activity) {
        if (activity instanceof Activity.Move move) {
            return move.to();
        }
        if (activity instanceof Activity.Wait wait) {
            return wait.at();
        }
        if (activity instanceof Activity.Fill fill) {
            return fill.at();
        }
        if (activity instanceof Activity.Plant plant) {
            return plant.field();
        }
        if (activity instanceof Activity.Draw draw) {
            return draw.at();
        }
        if (activity instanceof Activity.Extract extract) {
            return extract.at();
        }
        if (activity instanceof Activity.Clean clean) {
            return clean.at();
        }
        if (activity instanceof Activity.Transfer transfer) {
            return transfer.at();
        }
        if (activity instanceof Activity.Dump dump) {
            return dump.at();
        }
        throw new IllegalArgumentException("no place of " + activity);
    }
}
