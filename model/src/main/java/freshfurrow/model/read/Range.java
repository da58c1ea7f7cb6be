package freshfurrow.model.read;

/**
 * What a figure in SI units may be.
 *
 * @param least the least, included unless {@code above}
 * @param most the most, included
 * @param above whether the least itself is out of range
 * @param words what may be written, with units
 * @param example a number in range
 */
record Range(double least, double most, boolean above, String words, String example) {
    static Range between(double least, double most, String words) {
        return new Range(least, most, false, words, "1");
    }

    static Range above0(double most, String words) {
        return new Range(0, most, true, words, "1");
    }

    static Range from0(double most, String words) {
        return new Range(0, most, false, words, "1");
    }

    boolean holds(double figure) {
        return figure <= most && (above ? figure > least : figure >= least);
    }
}
