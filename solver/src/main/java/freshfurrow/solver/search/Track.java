package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.solver.schedule.FieldLists;

/** A way to go through a round of the search. */
interface Track {
    /**
     * The best of the lists that it comes by, {@code start} among them.
     *
     * @param heat the score by which an accepted move may worsen the lists, to begin with; above 0 on the medium and the soft level
     */
    Found run(FieldLists start, long seed, HardMediumSoftLongScore heat, SearchLimits limits);

    /** Moves tried in all runs that have ended. */
    long movesTried();
}
