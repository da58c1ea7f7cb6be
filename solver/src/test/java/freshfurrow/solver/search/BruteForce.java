package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The best score of all ways to put every field into one of two lists, found by trying each. Lists that begin alike come one after the
 * other, so that the timeline plays what they share once, and it stops where a plan is already worse than the best so far.
 */
final class BruteForce {
    /** The last places, whose 24 ways to be filled share what comes before. */
    private static final int PLACES_AT_THE_END = 4;

    private final Timeline timeline;
    private final int fields;
    private final int[][] lists;
    private final int[] sizes = new int[2];
    private final boolean[] used;
    private HardMediumSoftLongScore best = HardMediumSoftLongScore.of(Long.MIN_VALUE, 0, 0);
    private long tried;

    /** Whether the lists played next are the first of those that share what comes before the end. */
    private boolean beginsAnew;

    private BruteForce(CompiledSeason season) {
        if (season.planterCount() != 2) {
            throw new IllegalArgumentException("two planters, not " + season.planterCount());
        }
        timeline = new Timeline(season);
        fields = season.fieldCount();
        lists = new int[2][fields];
        used = new boolean[fields];
    }

    /** The best score and how many plans were tried. */
    record Result(HardMediumSoftLongScore score, long plans) {}

    static Result best(CompiledSeason season) {
        BruteForce search = new BruteForce(season);
        int half = search.fields / 2;
        // the even splits first, among which the best plan is likely
        IntStream.rangeClosed(0, search.fields)
                .boxed()
                .sorted(Comparator.comparingInt(split -> Math.abs(split - half)))
                .forEach(search::split);
        return new Result(search.best, search.tried);
    }

    private void split(int first) {
        sizes[0] = first;
        sizes[1] = fields - first;
        fill(0, 0);
    }

    /** Fills both lists in turn, so that what is filled last is planted last. */
    private void fill(int first, int second) {
        if (first + second == fields) {
            play();
            return;
        }
        beginsAnew |= fields - first - second == PLACES_AT_THE_END;
        int planter = second == sizes[1] || (first < sizes[0] && first <= second) ? 0 : 1;
        for (int field = 0; field < fields; field++) {
            if (!used[field]) {
                used[field] = true;
                lists[planter][planter == 0 ? first : second] = field;
                fill(planter == 0 ? first + 1 : first, planter == 0 ? second : second + 1);
                used[field] = false;
            }
        }
    }

    private void play() {
        // medium is never made good, and no plan breaks fewer rules than none
        timeline.rerun(lists, sizes, best.hardScore() == 0 ? best.mediumScore() : Long.MIN_VALUE);
        if (beginsAnew) {
            timeline.adopt();
            beginsAnew = false;
        }
        HardMediumSoftLongScore score = HardMediumSoftLongScore.of(timeline.hard(), timeline.medium(), timeline.soft());
        if (score.compareTo(best) > 0) {
            best = score;
        }
        tried++;
    }
}
