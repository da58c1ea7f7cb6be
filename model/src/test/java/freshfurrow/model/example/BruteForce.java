package freshfurrow.model.example;

import freshfurrow.model.plan.Plan.Score;
import freshfurrow.model.season.Field;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The best lists of a small season, found by playing out all there are: n fields on two planters have (n + 1)! ways, 362,880 for 8
 * fields. Every field stands in a list of a planter that may plant it; one that no planter may plant is left out.
 */
public final class BruteForce {
    private static final Comparator<Score> WORST_FIRST = Comparator.comparingLong(Score::hard)
            .thenComparingLong(Score::medium)
            .thenComparingLong(Score::soft);

    private final CompiledSeason season;
    private final Timeline timeline;
    private final int[][] lists;
    private final int[] sizes;
    private final boolean[] placed;
    private int toPlace;

    private long ways;
    private Score best = new Score(Long.MIN_VALUE, Long.MIN_VALUE, Long.MIN_VALUE);
    private List<List<String>> bestLists = List.of();

    private BruteForce(CompiledSeason season) {
        this.season = season;
        timeline = new Timeline(season);
        lists = new int[season.planterCount()][season.fieldCount()];
        sizes = new int[season.planterCount()];
        placed = new boolean[season.fieldCount()];
        for (int field = 0; field < placed.length; field++) {
            placed[field] = !anyMayPlant(field);
            toPlace += placed[field] ? 0 : 1;
        }
    }

    /**
     * What was found.
     *
     * @param score the best there is
     * @param lists field ids by planter that have it; the first found
     * @param ways how many were played out
     */
    public record Optimum(Score score, List<List<String>> lists, long ways) {
        private Optimum orBetter(Optimum other) {
            Optimum better = WORST_FIRST.compare(other.score, score) > 0 ? other : this;
            return new Optimum(better.score, better.lists, ways + other.ways);
        }
    }

    /** Takes a time that grows with the factorial of the number of fields, on all processors: meant for 8 at most. */
    public static Optimum of(CompiledSeason season) {
        return IntStream.rangeClosed(0, season.fieldCount())
                .parallel()
                .mapToObj(branch -> new BruteForce(season).search(branch))
                .reduce(Optimum::orBetter)
                .orElseThrow();
    }

    /** All ways in which the first planter's list begins with a field, or is empty for the branch after the last field. */
    private Optimum search(int branch) {
        if (branch < placed.length) {
            extendBy(branch, 0);
        } else if (lists.length > 1) {
            extend(1);
        } else if (toPlace == 0) {
            playOut();
        }
        return new Optimum(best, bestLists, ways);
    }

    /** All ways to go on with the list of a planter, or with the next planter's. */
    private void extend(int planter) {
        if (planter == lists.length - 1 && toPlace == 0) {
            playOut();
            return;
        }
        for (int field = 0; field < placed.length; field++) {
            extendBy(field, planter);
        }
        if (planter < lists.length - 1) {
            extend(planter + 1);
        }
    }

    private void extendBy(int field, int planter) {
        if (!placed[field] && season.allows(planter, field)) {
            placed[field] = true;
            toPlace--;
            lists[planter][sizes[planter]++] = field;
            extend(planter);
            sizes[planter]--;
            toPlace++;
            placed[field] = false;
        }
    }

    private void playOut() {
        ways++;
        timeline.run(lists, sizes);
        Score score = new Score(timeline.hard(), timeline.medium(), timeline.soft());
        if (WORST_FIRST.compare(score, best) > 0) {
            best = score;
            bestLists = named();
        }
    }

    private List<List<String>> named() {
        List<Field> fields = season.season().fields();
        return IntStream.range(0, lists.length)
                .mapToObj(planter -> Arrays.stream(lists[planter], 0, sizes[planter])
                        .mapToObj(field -> fields.get(field).id())
                        .toList())
                .toList();
    }

    private boolean anyMayPlant(int field) {
        for (int planter = 0; planter < lists.length; planter++) {
            if (season.allows(planter, field)) {
                return true;
            }
        }
        return false;
    }
}
