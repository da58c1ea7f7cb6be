package freshfurrow.solver.lived;

import static freshfurrow.model.quantity.Factors.DAY_S;

import java.util.Arrays;
import java.util.function.IntBinaryOperator;

/** On which days a machine was at work, from its first deed of the day to its last, and how long it was busy. */
final class Attendance {
    private final int[] first;
    private final int[] last;
    private long busyS;

    Attendance(int days) {
        first = new int[days];
        last = new int[days];
        Arrays.fill(first, Integer.MAX_VALUE);
    }

    /** It did something from {@code start} to {@code end}, s since the season's first midnight. */
    void worked(int start, int end) {
        int day = Math.min(start / DAY_S, first.length - 1);
        first[day] = Math.min(first[day], start);
        last[day] = Math.max(last[day], end);
        busyS += end - start;
    }

    /** Time of its deeds, s. */
    long busyS() {
        return busyS;
    }

    /** Time at work, s: what is told of hours between the first and the last deed of each day. */
    long atWorkS(IntBinaryOperator hoursBetween) {
        long sum = 0;
        for (int day = 0; day < first.length; day++) {
            if (last[day] > 0) {
                sum += hoursBetween.applyAsInt(first[day], last[day]);
            }
        }
        return sum;
    }
}
