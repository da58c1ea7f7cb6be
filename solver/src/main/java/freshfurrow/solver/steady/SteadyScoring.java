package freshfurrow.solver.steady;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.season.Goals;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.schedule.Scoring;

/**
 * As many promises kept as some lateness and some effort allow, then the goals of the season. Of lists within the allowance those
 * with fewer fields moved are better: a moved field costs more lateness than they can differ by. Lists beyond it are worse than all
 * within, as if they had moved one field more than was promised; so a search may pass through them but not end there.
 *
 * @param free what can be had without a thought of promises
 * @param leastMedium late and unserved area that is allowed, as the medium level of a score, 0 or less
 * @param mostEffortMin effort that is allowed where late and unserved area is no less than free, moved fields apart
 * @param movedCost what a moved field takes from the medium level, above the allowance
 * @param promises how many fields are promised
 */
record SteadyScoring(Free free, long leastMedium, double mostEffortMin, long movedCost, int promises)
        implements Scoring {
    /**
     * Lateness and effort beyond those of lists found without a thought of promises, as a share of them: half of the two per cent that
     * keeping promises may cost, as those lists were found in a part of the time.
     */
    static final double MOST_ADDED = 0.01;

    /**
     * What lists come to that were found without a thought of promises.
     *
     * @param medium of their score
     * @param unservedDm2 no promise is kept by leaving out more than that
     * @param movedMin minutes of the soft level that are not effort, for each moved field
     */
    record Free(long medium, long unservedDm2, double movedMin) {}

    /** @param played the timeline after lists that were found without a thought of promises */
    static SteadyScoring besides(Timeline played, int promises, Goals goals) {
        Free free = new Free(played.medium(), played.unservedDm2(), goals.movedMin());
        long least = (long) Math.ceil(free.medium() * (1 + MOST_ADDED));
        double mostEffortMin = effortMin(played, free.movedMin()) * (1 + MOST_ADDED);
        return new SteadyScoring(free, least, mostEffortMin, free.medium() - least + 1, promises);
    }

    @Override
    public HardMediumSoftLongScore of(Timeline played) {
        long moved = isAllowed(played) ? played.movedFields() : promises + 1;
        return HardMediumSoftLongScore.of(played.hard(), played.medium() - moved * movedCost, played.soft());
    }

    private boolean isAllowed(Timeline played) {
        return played.medium() >= leastMedium
                && played.unservedDm2() <= free.unservedDm2()
                && (played.medium() > free.medium() || effortMin(played, free.movedMin()) <= mostEffortMin);
    }

    private static double effortMin(Timeline played, double movedMin) {
        return -played.soft() - played.movedFields() * movedMin;
    }
}
