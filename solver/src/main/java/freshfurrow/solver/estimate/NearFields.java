package freshfurrow.solver.estimate;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * For each field a few others that may well stand beside it in a list: some that are near by road, and some that are near
 * in their windows, of which those near by road come first.
 */
public final class NearFields {
    private static final int PER_KIND = 12;
    private static final double METRES_PER_DAY_APART = 1_000;

    private final int[][] byRoad;
    private final int[][] byWindow;

    public NearFields(SeasonEstimate season) {
        int fields = season.fieldCount();
        byRoad = new int[fields][];
        byWindow = new int[fields][];
        for (int field = 0; field < fields; field++) {
            int here = field;
            byRoad[field] = nearest(fields, here, other -> season.metres(here, other));
            byWindow[field] = nearest(
                    fields,
                    here,
                    other -> daysApart(season, here, other) * METRES_PER_DAY_APART + season.metres(here, other));
        }
    }

    /** Near by road, nearest first; empty only when there is no other field. */
    public int[] byRoad(int field) {
        return byRoad[field];
    }

    /** Near by window and road, nearest first; empty only when there is no other field. */
    public int[] byWindow(int field) {
        return byWindow[field];
    }

    private static int daysApart(SeasonEstimate season, int one, int other) {
        return Math.abs(season.opens(one) - season.opens(other)) + Math.abs(season.closes(one) - season.closes(other));
    }

    private static int[] nearest(int fields, int here, IntToDoubleFunction distance) {
        long[] byDistance = new long[fields - 1];
        for (int other = 0, i = 0; other < fields; other++) {
            if (other != here) {
                byDistance[i++] = packed((float) distance.applyAsDouble(other), other);
            }
        }
        Arrays.sort(byDistance);
        return Arrays.stream(byDistance)
                .limit(PER_KIND)
                .mapToInt(packed -> (int) packed)
                .toArray();
    }

    /** Sorts by distance, then by field: floats of 0 or more sort like their bits. */
    private static long packed(float distance, int field) {
        return (long) Float.floatToIntBits(distance) << 32 | field;
    }
}
