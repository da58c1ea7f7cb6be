package freshfurrow.solver.construction;

import freshfurrow.solver.estimate.SeasonEstimate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All planters along one curve over the land, so that they stay near one another and near the rigs that they share: whoever is free takes
 * the next field. Fields whose windows close about the same day are done with before later ones, or all are in one convoy. A planter
 * passes over some fields that lie further off or want another recipe than its last one; others will take them. A field whose window
 * is still closed comes after all that are open.
 */
final class Convoy implements NextField {
    private static final double HOUR_S = 3_600;

    private final SeasonEstimate season;
    private final Way way;
    private final int[] rank;

    /**
     * Which way a convoy goes.
     *
     * @param blockDays days after one another that count as the same for the end of a window
     */
    record Way(Curve curve, int blockDays, Detours detours) {
        Way with(Detours others) {
            return new Way(curve, blockDays, others);
        }
    }

    /**
     * What a planter goes out of the convoy's order for.
     *
     * @param fieldsAnHour so many fields a planter passes over rather than drive for an hour more
     * @param fieldsARecipe so many rather than change its recipe
     */
    record Detours(double fieldsAnHour, double fieldsARecipe) {}

    Convoy(SeasonEstimate season, FieldMap map, Way way) {
        this.season = season;
        this.way = way;
        double[] along = way.curve().along(map);
        List<Integer> order = IntStream.range(0, map.fieldCount())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(field -> Math.floorDiv(season.closes(field), way.blockDays()))
                        .thenComparingDouble(field -> along[field]))
                .toList();
        rank = new int[order.size()];
        for (int i = 0; i < rank.length; i++) {
            rank[order.get(i)] = i;
        }
    }

    @Override
    public double pressure(int planter, int from, int field, double clockS) {
        Detours detours = way.detours();
        double waitS = season.clockAtStartOf(season.opens(field), planter) - clockS;
        boolean closed = waitS > 0 && waitS > season.moveS(planter, from, field);
        boolean changes = from != SeasonEstimate.START && season.recipe(from) != season.recipe(field);
        return -rank[field]
                - (closed ? rank.length : 0)
                - detours.fieldsAnHour() * season.driveS(planter, from, field) / HOUR_S
                - (changes ? detours.fieldsARecipe() : 0);
    }
}
