package freshfurrow.solver.independent;

import freshfurrow.model.timeline.CompiledSeason;
import java.util.Comparator;
import java.util.stream.IntStream;

/** For each field all others, the nearest by road and window first. */
final class Neighbours {
    private static final int MOST = 60;
    private static final int METRES_A_DAY = 500;

    private final int[][] near;

    Neighbours(CompiledSeason season) {
        near = IntStream.range(0, season.fieldCount())
                .parallel()
                .mapToObj(field -> nearest(season, field))
                .toArray(int[][]::new);
    }

    /** The nearest first; fewer than all in seasons of many fields. */
    int[] of(int field) {
        return near[field];
    }

    private static int[] nearest(CompiledSeason season, int field) {
        return IntStream.range(0, season.fieldCount())
                .filter(other -> other != field)
                .boxed()
                .sorted(Comparator.comparingInt(other -> apart(season, field, other)))
                .limit(MOST)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static int apart(CompiledSeason season, int one, int other) {
        int days = Math.abs(season.windowFirstDay(one) - season.windowFirstDay(other))
                + Math.abs(season.windowLastDay(one) - season.windowLastDay(other));
        return season.metresBetweenFields(one, other) + METRES_A_DAY * days;
    }
}
