package freshfurrow.solver.relaxation;

import java.util.Arrays;

/** Values in order of size. */
final class Ranked {
    private Ranked() {}

    /** The value that a share of the values, 0 to 1, does not exceed; 0 where there are none. */
    static double within(double[] values, double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 0 : sorted[(int) Math.round(share * (sorted.length - 1))];
    }
}
