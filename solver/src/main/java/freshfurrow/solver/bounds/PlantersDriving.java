package freshfurrow.solver.bounds;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.relaxation.FieldGroups;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What planters drive at the least.
 *
 * <p>Proof. A planter drives from where it stands to begin with to the first of its fields of which it plants any, and from one to the next, each once and by itself unless it is mounted on a rig. So the ways of all planters
 * that are not mounted come to every field of which anything is planted, but for those that a mounted machine may plant, by drives of which each takes no less than it takes the fastest planter that may plant the fields at both its ends: {@link SpanningForest}.
 * A field of which nothing is planted is left in whole.
 */
final class PlantersDriving {
    /** More than any drive of a season takes, s. */
    private static final long NO_WAY_S = 1L << 32;

    private final CompiledSeason season;
    private final int[] fields;
    private final int[] set;
    private final List<BitSet> sets = new ArrayList<>();
    private final boolean[] mayBeMounted;
    private final int[][] fastest;
    private final SpanningForest forest;

    PlantersDriving(CompiledSeason season) {
        this.season = season;
        fields = IntStream.range(0, season.fieldCount())
                .filter(field -> !FieldGroups.planters(season, field).isEmpty())
                .toArray();
        set = new int[fields.length];
        Map<BitSet, Integer> indices = new HashMap<>();
        for (int node = 0; node < fields.length; node++) {
            set[node] = indices.computeIfAbsent(FieldGroups.planters(season, fields[node]), planters -> {
                sets.add(planters);
                return sets.size() - 1;
            });
        }
        mayBeMounted = new boolean[sets.size()];
        fastest = new int[sets.size()][sets.size()];
        for (int one = 0; one < fastest.length; one++) {
            mayBeMounted[one] = sets.get(one).stream().anyMatch(this::isMounted);
            for (int other = 0; other < fastest.length; other++) {
                fastest[one][other] = fastestOfBoth(sets.get(one), sets.get(other));
            }
        }
        int starts = (int) IntStream.range(0, season.planterCount())
                .filter(planter -> !isMounted(planter))
                .count();
        forest = new SpanningForest(fields.length, starts, new Drives());
    }

    private boolean isMounted(int planter) {
        return season.season().applicators().get(planter).on().isPresent();
    }

    /** Of planters that are not mounted; -1 where there is none. */
    private int fastestOfBoth(BitSet one, BitSet other) {
        return IntStream.range(0, season.planterCount())
                .filter(planter -> one.get(planter) && other.get(planter) && !isMounted(planter))
                .boxed()
                .max(Comparator.comparingDouble(
                        planter -> season.season().applicators().get(planter).roadSpeedMPerS()))
                .orElse(-1);
    }

    /**
     * Of all plans that leave no more unplanted, s.
     *
     * @param unplantedDm2 of fields that some planter may plant
     */
    double leastS(double unplantedDm2) {
        return Math.max(0, (double) forest.least() - leftOut(unplantedDm2)) / SpanningForest.PARTS;
    }

    /** The most that fields of so much area take off, or parts of them. */
    private double leftOut(double unplantedDm2) {
        List<Integer> dearestFirst = IntStream.range(0, fields.length)
                .filter(node -> forest.share(node) > 0 && season.areaDm2(fields[node]) <= unplantedDm2)
                .boxed()
                .sorted(Comparator.comparingDouble(node -> -(double) forest.share(node) / season.areaDm2(fields[node])))
                .toList();
        double left = unplantedDm2;
        double off = 0;
        for (int node : dearestFirst) {
            double area = (double) season.areaDm2(fields[node]);
            off += (double) forest.share(node) * Math.min(1, left / area);
            left -= Math.min(left, area);
        }
        return off;
    }

    private final class Drives implements SpanningForest.Costs {
        @Override
        public long between(int node, int other) {
            int planter = fastest[set[node]][set[other]];
            return planter < 0
                    ? NO_WAY_S
                    : season.driveS(planter, season.metresBetweenFields(fields[node], fields[other]));
        }

        @Override
        public long fromStart(int node) {
            return sets.get(set[node]).stream()
                    .mapToLong(planter -> season.driveS(planter, season.metresFromStart(planter, fields[node])))
                    .min()
                    .orElse(NO_WAY_S);
        }

        @Override
        public boolean isFree(int node) {
            return mayBeMounted[set[node]];
        }
    }
}
