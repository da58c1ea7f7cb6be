package freshfurrow.app.output;

import freshfurrow.app.time.Grace;
import freshfurrow.solver.stop.StopSignal;
import java.util.Optional;
import java.util.function.Supplier;

/** The page that is written with a plan. */
public final class PlanPage {
    /** Longer than any page takes on a quiet machine, once planning is told to stop. */
    private static final long GRACE_MS = 1_000;

    private static final long GRACE_MS_PER_FIELD = 1;

    private PlanPage() {}

    /**
     * The page made; empty when planning was told to stop and making it takes longer than a second or so from then on.
     *
     * @param fields of its season
     */
    public static Optional<String> inTime(StopSignal told, int fields, Supplier<String> html) {
        return Grace.inTime(told, GRACE_MS + GRACE_MS_PER_FIELD * fields, () -> Optional.of(html.get()));
    }

    /** What became of the page. */
    public static PageOutcome outcome(boolean wanted, Optional<String> page) {
        if (!wanted) {
            return PageOutcome.NOT_WANTED;
        }
        return page.isPresent() ? PageOutcome.WRITTEN : PageOutcome.STOPPED;
    }
}
