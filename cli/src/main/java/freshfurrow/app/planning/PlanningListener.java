package freshfurrow.app.planning;

import freshfurrow.model.season.Season;
import freshfurrow.solver.ProgressListener;

/** Told how far the planning of a season is. It is told from several threads, and returns quickly. */
public interface PlanningListener extends ProgressListener {
    /** Hears nothing. */
    PlanningListener SILENT = new PlanningListener() {
        @Override
        public void begins(Season season) {}

        @Override
        public void at(freshfurrow.solver.Progress progress) {}

        @Override
        public void searched() {}
    };

    /**
     * All that was given is good, and the search begins. From now on a signal to stop brings the best plan that was found until then; before,
     * nothing is planned or written.
     *
     * @param season what is left of it to plan
     */
    void begins(Season season);

    /** The search is over, and {@link #at} will not be called any more. */
    void searched();
}
