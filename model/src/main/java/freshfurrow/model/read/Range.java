package freshfurrow.model.read;

/**
 * What a figure in SI units may be.
 *
 * @param least the least, included
 * @param most the most, included
 * @param words what may be written, with units
 * @param example a number in range
 */
record Range(double least, double most, String words, String example) {
    static Range between(double least, double most, String words) {
        return new Range(least, most, words, "1");
    }

    static Range from0(double most, String words) {
        return between(0, most, words);
    }

    boolean holds(double figure) {
        return figure >= least && figure <= most;
    }
}
