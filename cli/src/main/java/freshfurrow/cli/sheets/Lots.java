package freshfurrow.cli.sheets;

import freshfurrow.cli.day.MachineDay;
import freshfurrow.cli.day.PlanIndex;
import freshfurrow.model.plan.Activity;
import java.util.SortedSet;
import java.util.TreeSet;

/** Lots of compost. */
final class Lots {
    private Lots() {}

    /** Those that a machine's batches of a day are made of. */
    static SortedSet<String> of(MachineDay day, PlanIndex index) {
        SortedSet<String> lots = new TreeSet<>();
        day.each(Activity.Extract.class)
                .forEach(extract ->
                        lots.addAll(index.batch(extract.batch()).lots().keySet()));
        return lots;
    }
}
