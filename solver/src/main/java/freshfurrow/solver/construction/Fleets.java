package freshfurrow.solver.construction;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The fleets of a season that are tried: all planters, and fewer and fewer of the best. */
final class Fleets {
    /** Of a fleet, in the next smaller one. */
    private static final double SMALLER = 0.8;

    private final CompiledSeason season;
    private final SeasonEstimate estimate;

    private Fleets(CompiledSeason season, SeasonEstimate estimate) {
        this.season = season;
        this.estimate = estimate;
    }

    /** The whole one first, and then each smaller than the one before; the last one is of one planter. */
    static List<Fleet> of(CompiledSeason season, SeasonEstimate estimate) {
        List<Integer> best = new Fleets(season, estimate).bestFirst();
        return IntStream.iterate(best.size(), size -> size > 0, Fleets::nextSize)
                .mapToObj(size -> new Fleet(season, bits(best.subList(0, size))))
                .toList();
    }

    private static int nextSize(int size) {
        return Math.min(size - 1, (int) Math.round(size * SMALLER));
    }

    private static BitSet bits(List<Integer> planters) {
        BitSet bits = new BitSet();
        planters.forEach(bits::set);
        return bits;
    }

    /** Each adds as much as it can to what those before it may plant, and of several that add as much is the fastest. */
    private List<Integer> bestFirst() {
        List<Integer> left = new ArrayList<>(
                IntStream.range(0, season.planterCount()).boxed().toList());
        double[] secondsPerDm2 = left.stream().mapToDouble(this::secondsPerDm2).toArray();
        BitSet plantable = new BitSet();
        List<Integer> best = new ArrayList<>();
        while (!left.isEmpty()) {
            Integer next = left.stream()
                    .min(Comparator.<Integer>comparingLong(planter -> -addedDm2(planter, plantable))
                            .thenComparingDouble(planter -> secondsPerDm2[planter]))
                    .orElseThrow();
            left.remove(next);
            best.add(next);
            allowed(next).forEach(plantable::set);
        }
        return best;
    }

    private long addedDm2(int planter, BitSet plantable) {
        return allowed(planter)
                .filter(field -> !plantable.get(field))
                .mapToLong(season::areaDm2)
                .sum();
    }

    private IntStream allowed(int planter) {
        return IntStream.range(0, season.fieldCount()).filter(field -> season.allows(planter, field));
    }

    /** To plant what it may, with fills as they are weighed. */
    private double secondsPerDm2(int planter) {
        double refillS = season.season().goals().refillMin() * MINUTE_S;
        double seconds = 0;
        double dm2 = 0;
        for (int field : allowed(planter).toArray()) {
            double loads = (double) season.areaDm2(field)
                    / Math.max(1, season.mostOfALoadDm2(planter, season.recipeIndex(field)));
            seconds += estimate.plantS(planter, field) + loads * refillS;
            dm2 += season.areaDm2(field);
        }
        return dm2 == 0 ? Double.MAX_VALUE : seconds / dm2;
    }
}
