package freshfurrow.solver.construction;

import java.util.Arrays;

/** What curves have in common. */
final class Curves {
    private Curves() {}

    /** Where each value lies between the least, 0, and the greatest, 1. */
    static double[] shares(double[] values) {
        double least = Arrays.stream(values).min().orElse(0);
        double span = Arrays.stream(values).max().orElse(0) - least;
        return Arrays.stream(values)
                .map(value -> span > 0 ? (value - least) / span : 0)
                .toArray();
    }
}
