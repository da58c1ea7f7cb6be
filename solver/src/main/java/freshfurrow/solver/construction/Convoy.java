package freshfurrow.solver.construction;

import freshfurrow.solver.estimate.SeasonEstimate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All planters along one curve over the land, so that they stay near one another and near the rigs that they share: whoever is free takes
 * the next field. Fields whose windows close about the same day are done with before later ones, or all are in one convoy; a field
 * whose window is still closed comes after all that are open.
 */
final class Convoy implements NextField {
    private final SeasonEstimate season;
    private final int[] rank;

    /** @param blockDays days after one another that count as the same for the end of a window */
    Convoy(SeasonEstimate season, Curve curve, FieldMap map, int blockDays) {
        this.season = season;
        double[] along = curve.along(map);
        List<Integer> order = IntStream.range(0, map.fieldCount())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(field -> Math.floorDiv(season.closes(field), blockDays))
                        .thenComparingDouble(field -> along[field]))
                .toList();
        rank = new int[order.size()];
        for (int i = 0; i < rank.length; i++) {
            rank[order.get(i)] = i;
        }
    }

    @Override
    public double pressure(int planter, int from, int field, double clockS) {
        double waitS = season.clockAtStartOf(season.opens(field), planter) - clockS;
        boolean closed = waitS > 0 && waitS > season.moveS(planter, from, field);
        return -rank[field] - (closed ? rank.length : 0);
    }
}
