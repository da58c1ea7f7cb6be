package freshfurrow.model.learn;

import java.util.Arrays;

/** Medians of figures, at least one. */
final class Medians {
    private Medians() {}

    static double of(double[] figures) {
        double[] sorted = figures.clone();
        Arrays.sort(sorted);
        return ofSorted(sorted);
    }

    /** With an even number, halfway between the two in the middle. */
    static double ofSorted(double[] sorted) {
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : sorted[middle - 1] / 2 + sorted[middle] / 2;
    }
}
