package freshfurrow.solver.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * For each field a few others that may well stand beside it in a list, in several kinds of nearness: by road; by window; by recipe,
 * as a load serves no other; by drainage, as such fields are dry on the same day after rain. Of those that are equally near in kind
 * the nearest by road come first. A kind that tells no field of the season from another is left out.
 */
public final class NearFields {
    private static final int PER_KIND = 12;
    private static final int METRES_PER_DAY_APART = 1_000;

    /** So much road that a field of another kind is near only when there are too few of the same. */
    private static final int METRES_TO_ANOTHER_KIND = 1_000_000;

    /** By kind and field. */
    private final List<int[][]> kinds = new ArrayList<>();

    public NearFields(SeasonEstimate season) {
        int fields = season.fieldCount();
        kinds.add(near(fields, season::metres));
        kinds.add(near(fields, (here, other) -> season.metres(here, other) + daysApart(season, here, other)));
        addKind(season, season::recipe);
        addKind(season, season::drainage);
    }

    /** Kinds of nearness, 2 or more. */
    public int kinds() {
        return kinds.size();
    }

    /** Near in one of the kinds, the nearest first; empty only when there is no other field. */
    public int[] near(int kind, int field) {
        return kinds.get(kind)[field];
    }

    private void addKind(SeasonEstimate season, IntFunction<Object> kindOf) {
        int fields = season.fieldCount();
        List<Object> kind = IntStream.range(0, fields).mapToObj(kindOf).toList();
        if (kind.stream().distinct().count() > 1) {
            kinds.add(near(
                    fields,
                    (here, other) -> season.metres(here, other)
                            + daysApart(season, here, other) / 4
                            + (kind.get(here).equals(kind.get(other)) ? 0 : METRES_TO_ANOTHER_KIND)));
        }
    }

    /** In metres. */
    private static int daysApart(SeasonEstimate season, int one, int other) {
        int days =
                Math.abs(season.opens(one) - season.opens(other)) + Math.abs(season.closes(one) - season.closes(other));
        return days * METRES_PER_DAY_APART;
    }

    private static int[][] near(int fields, Distance distance) {
        int[][] near = new int[fields][];
        for (int field = 0; field < fields; field++) {
            near[field] = nearest(fields, field, distance);
        }
        return near;
    }

    private static int[] nearest(int fields, int here, Distance distance) {
        long[] nearest = new long[Math.min(PER_KIND, fields - 1)];
        int count = 0;
        for (int other = 0; other < fields; other++) {
            if (other == here) {
                continue;
            }
            long next = ((long) distance.between(here, other) << 32) | other;
            if (count < nearest.length || next < nearest[count - 1]) {
                int at = count < nearest.length ? count++ : count - 1;
                for (; at > 0 && nearest[at - 1] > next; at--) {
                    nearest[at] = nearest[at - 1];
                }
                nearest[at] = next;
            }
        }
        return Arrays.stream(nearest).mapToInt(packed -> (int) packed).toArray();
    }

    @FunctionalInterface
    private interface Distance {
        int between(int here, int other);
    }
}
