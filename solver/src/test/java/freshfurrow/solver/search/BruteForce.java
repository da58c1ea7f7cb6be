package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;

/** The best score of all ways to put every field into one of two lists, found by trying each. */
final class BruteForce {
    private final Timeline timeline;
    private final int[][] lists;
    private final int[] sizes = new int[2];
    private final int[] order;
    private HardMediumSoftLongScore best = HardMediumSoftLongScore.of(Long.MIN_VALUE, 0, 0);

    private BruteForce(CompiledSeason season) {
        if (season.planterCount() != 2) {
            throw new IllegalArgumentException("two planters, not " + season.planterCount());
        }
        timeline = new Timeline(season);
        lists = new int[2][season.fieldCount()];
        order = new int[season.fieldCount()];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
    }

    static HardMediumSoftLongScore bestScore(CompiledSeason season) {
        BruteForce search = new BruteForce(season);
        search.permute(0);
        return search.best;
    }

    private void permute(int from) {
        if (from == order.length) {
            splitEverywhere();
        }
        for (int i = from; i < order.length; i++) {
            swap(from, i);
            permute(from + 1);
            swap(from, i);
        }
    }

    private void swap(int i, int j) {
        int field = order[i];
        order[i] = order[j];
        order[j] = field;
    }

    private void splitEverywhere() {
        for (int split = 0; split <= order.length; split++) {
            System.arraycopy(order, 0, lists[0], 0, split);
            System.arraycopy(order, split, lists[1], 0, order.length - split);
            sizes[0] = split;
            sizes[1] = order.length - split;
            timeline.run(lists, sizes);
            HardMediumSoftLongScore score =
                    HardMediumSoftLongScore.of(timeline.hard(), timeline.medium(), timeline.soft());
            if (score.compareTo(best) > 0) {
                best = score;
            }
        }
    }
}
