package freshfurrow.solver.bounds;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.relaxation.FieldGroups;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.stop.StopSignal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Goes through all lists of fields by planter, with extract and without where that is allowed, one planter after the other. */
final class EveryList {
    private final CompiledSeason season;
    private final LeavingOut leavingOut;
    private final boolean leaveOut;
    private final StopSignal stop;
    private final Timeline timeline;
    private final int[][] lists;
    private final int[] sizes;
    private final boolean[] placed;
    private int toPlace;
    private long leftOutDm2;
    private Enumeration.Best best;

    /** @param leaveOut whether to go through the plans that leave out fields, or through those with all that may be planted */
    EveryList(CompiledSeason season, LeavingOut leavingOut, boolean leaveOut, Enumeration.Best known, StopSignal stop) {
        this.season = season;
        this.leavingOut = leavingOut;
        this.leaveOut = leaveOut;
        this.stop = stop;
        best = known;
        timeline = new Timeline(season);
        lists = new int[season.planterCount()][season.fieldCount()];
        sizes = new int[season.planterCount()];
        placed = new boolean[season.fieldCount()];
        for (int field = 0; field < placed.length; field++) {
            placed[field] = FieldGroups.planters(season, field).isEmpty();
            toPlace += placed[field] ? 0 : 1;
            leftOutDm2 += season.areaDm2(field);
        }
    }

    /** The best where the first planter's list begins with a field, or is empty for the branch after the last field. */
    Enumeration.Best search(int branch) {
        if (branch < placed.length) {
            extendBy(branch, 0);
        } else if (lists.length > 1) {
            extend(1);
        } else {
            tryOut();
        }
        return best;
    }

    private void extend(int planter) {
        if (stop.isSet()) {
            return;
        }
        boolean last = planter == lists.length - 1;
        if (last) {
            tryOut();
        }
        for (int field = 0; toPlace > 0 && field < placed.length; field++) {
            extendBy(field, planter);
        }
        if (!last) {
            extend(planter + 1);
        }
    }

    private void extendBy(int field, int planter) {
        if (!placed[field] && season.allows(planter, field)) {
            placed[field] = true;
            toPlace--;
            leftOutDm2 -= season.areaDm2(field);
            int index = sizes[planter]++;
            lists[planter][index] = field;
            extend(planter);
            if (season.mayGoWithout(field)) {
                lists[planter][index] = season.without(field);
                extend(planter);
            }
            sizes[planter]--;
            leftOutDm2 += season.areaDm2(field);
            toPlace++;
            placed[field] = false;
        }
    }

    private void tryOut() {
        boolean leavesOut = toPlace > 0;
        if (leavesOut != leaveOut
                || (leavesOut
                        && best.score().hardScore() == 0
                        && leavingOut.bestMediumWithout(leftOutDm2)
                                < best.score().mediumScore())) {
            return;
        }
        timeline.run(lists, sizes);
        HardMediumSoftLongScore score = HardMediumSoftLongScore.of(timeline.hard(), timeline.medium(), timeline.soft());
        if (score.compareTo(best.score()) > 0) {
            best = new Enumeration.Best(score, Optional.of(FieldLists.ofEntries(season, copy())));
        }
    }

    private List<List<Integer>> copy() {
        return IntStream.range(0, lists.length)
                .mapToObj(planter ->
                        Arrays.stream(lists[planter], 0, sizes[planter]).boxed().toList())
                .toList();
    }
}
