package freshfurrow.solver.steady;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.schedule.Scoring;

/**
 * As many promises kept as some lateness allows, then the goals of the season. Of lists within the allowance those with fewer fields
 * moved are better: a moved field costs more lateness than they can differ by. Lists beyond it are worse than all within, as if they
 * had moved one field more than was promised; so a search may pass through them but not end there.
 *
 * @param leastMedium late and unserved area that is allowed, as the medium level of a score, 0 or less
 * @param mostUnservedDm2 area that may stay unplanted: no promise is kept by leaving a field out
 * @param movedCost what a moved field takes from the medium level, above the allowance
 * @param promises how many fields are promised
 */
record SteadyScoring(long leastMedium, long mostUnservedDm2, long movedCost, int promises) implements Scoring {
    /**
     * Lateness beyond that of lists found without a thought of promises, as a share of it: half of the two per cent that keeping them may
     * cost, as those lists were found in half of the time.
     */
    static final double MOST_ADDED = 0.01;

    /** @param free the timeline after lists that were found without a thought of promises */
    static SteadyScoring besides(Timeline free, int promises) {
        long least = (long) Math.ceil(free.medium() * (1 + MOST_ADDED));
        return new SteadyScoring(least, free.unservedDm2(), free.medium() - least + 1, promises);
    }

    @Override
    public HardMediumSoftLongScore of(Timeline played) {
        boolean allowed = played.medium() >= leastMedium && played.unservedDm2() <= mostUnservedDm2;
        long moved = allowed ? played.movedFields() : promises + 1;
        return HardMediumSoftLongScore.of(played.hard(), played.medium() - moved * movedCost, played.soft());
    }
}
