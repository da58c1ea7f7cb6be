package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListScorer;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * How much worse annealing may make a season's lists at its start: a share of what moving one field beside a near one does
 * to them.
 */
final class Temperature {
    private static final int SAMPLES = 40;

    /**
     * Of a season of one field; the nth part of it where there are n, as so many moves are made at once. Measured: twice as much is worse by
     * 1 to 3 % with 50 fields and better by as much in calm seasons of 200; with 8 fields a quarter missed the best of all plans in 4 of 20
     * seasons.
     */
    private static final double SHARE = 3;

    /**
     * By money effort only breaks ties, and is to keep annealing from hardly any move that costs little. Measured: with 8 fields and 20,000
     * moves 1 of 60 searches missed the cheapest of all plans, without this 3.
     */
    private static final long TIMES_MORE_EFFORT_BY_MONEY = 20;

    private Temperature() {}

    /**
     * A score of 0 on the hard level, and at least 1 on the others.
     *
     * @param stop once set, fewer moves are sampled
     */
    static HardMediumSoftLongScore of(
            ListScorer scorer, NearFields near, FieldLists lists, long seed, StopSignal stop) {
        HardMediumSoftLongScore before = scorer.score(lists);
        Random random = new Random(seed);
        List<Long> medium = new ArrayList<>();
        List<Long> soft = new ArrayList<>();
        for (int sample = 0; sample < SAMPLES && !stop.isSet(); sample++) {
            HardMediumSoftLongScore worsening = before.subtract(scorer.score(moved(lists, near, random)));
            medium.add(worsening.mediumScore());
            soft.add(worsening.softScore());
        }
        return HardMediumSoftLongScore.of(
                0,
                share(medium, scorer.season().fieldCount()),
                share(soft, scorer.season().fieldCount()) * timesMoreEffort(scorer));
    }

    private static long timesMoreEffort(ListScorer scorer) {
        return scorer.season().season().goals().byMoney().isPresent() ? TIMES_MORE_EFFORT_BY_MONEY : 1;
    }

    /** The share of the middle one of those above 0; smaller in seasons of many fields, where as many moves are made at once. */
    private static long share(List<Long> worsenings, int fields) {
        long[] above = worsenings.stream()
                .mapToLong(Long::longValue)
                .filter(worsening -> worsening > 0)
                .sorted()
                .toArray();
        return above.length == 0 ? 1 : (long) Math.ceil(above[above.length / 2] * SHARE / fields);
    }

    private static FieldLists moved(FieldLists lists, NearFields near, Random random) {
        List<List<Integer>> moved = new ArrayList<>();
        lists.byPlanter().forEach(list -> moved.add(new ArrayList<>(list)));
        List<Integer> from = moved.get(random.nextInt(moved.size()));
        if (from.isEmpty()) {
            return lists;
        }
        Integer field = from.remove(random.nextInt(from.size()));
        int[] others = near.near(random.nextInt(near.kinds()), field);
        Integer nearOne = others.length == 0 ? field : (Integer) others[random.nextInt(others.length)];
        List<Integer> to = moved.stream()
                .filter(list -> list.contains(nearOne))
                .findFirst()
                .orElse(from);
        to.add(Math.max(0, to.indexOf(nearOne)), field);
        return lists.with(moved);
    }
}
