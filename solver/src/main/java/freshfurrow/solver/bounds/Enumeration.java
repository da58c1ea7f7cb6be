package freshfurrow.solver.bounds;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.relaxation.FieldGroups;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.stop.StopSignal;
import java.util.Optional;
import java.util.stream.IntStream;

/** The best plan of all of a small season, found by playing out every one, with the timeline as the judge. */
public final class Enumeration {
    /** So many loads are planned in a few seconds: the plans of eight fields and two planters with 16 loads each, say. */
    private static final long MOST_LOADS = 6_000_000;

    private Enumeration() {}

    /**
     * Lists that have the best score there is; of several the same ones on every run. Empty when there are too many plans to try in
     * some seconds, about more than those of eight fields and two planters.
     *
     * <p>Proof: a plan is a set of fields and, for each planter, a part of them in an order. All with all fields are played out. One
     * that leaves fields out leaves their area unserved, and is played out unless that alone is worse than the best so
     * far and that breaks no rule. Fields in the list of a planter that may not plant them break a rule, and are worse than any plan that breaks none.
     *
     * @param stop once set, the result is empty
     */
    public static Optional<FieldLists> best(CompiledSeason season, StopSignal stop) {
        if (season.planterCount() == 0 || ways(season) * Math.max(1, loads(season)) > MOST_LOADS) {
            return Optional.empty();
        }
        LeavingOut leavingOut = new LeavingOut(season);
        Best best = search(season, leavingOut, false, Best.NONE, stop);
        if (best.score().hardScore() < 0
                || best.score().mediumScore() <= leavingOut.bestMediumWithout(leavingOut.smallestDm2())) {
            best = search(season, leavingOut, true, best, stop);
        }
        return stop.isSet() ? Optional.empty() : best.lists();
    }

    /** What was found so far. */
    record Best(HardMediumSoftLongScore score, Optional<FieldLists> lists) {
        static final Best NONE = new Best(HardMediumSoftLongScore.of(Long.MIN_VALUE, 0, 0), Optional.empty());

        private Best orBetter(Best other) {
            return other.score.compareTo(score) > 0 ? other : this;
        }
    }

    private static Best search(
            CompiledSeason season, LeavingOut leavingOut, boolean leaveOut, Best known, StopSignal stop) {
        return IntStream.rangeClosed(0, season.fieldCount())
                .parallel()
                .mapToObj(branch -> new EveryList(season, leavingOut, leaveOut, known, stop).search(branch))
                .reduce(known, Best::orBetter);
    }

    /** Plans with all fields in some list: orders of the fields, with extract or without, times the ways to cut an order into a part a planter. */
    private static double ways(CompiledSeason season) {
        double ways = 1;
        for (int i = 1; i <= season.fieldCount(); i++) {
            ways *= (i + season.planterCount() - 1) * (season.mayGoWithout() ? 2.0 : 1.0);
        }
        return ways;
    }

    private static int loads(CompiledSeason season) {
        Timeline timeline = new Timeline(season);
        int[][] lists = new int[season.planterCount()][season.fieldCount()];
        int[] sizes = new int[season.planterCount()];
        for (int field = 0; field < season.fieldCount(); field++) {
            int planter = FieldGroups.planters(season, field).nextSetBit(0);
            if (planter >= 0) {
                lists[planter][sizes[planter]++] = field;
            }
        }
        timeline.run(lists, sizes);
        return timeline.fills();
    }
}
