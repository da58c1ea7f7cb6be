package freshfurrow.model.learn;

/**
 * One look at a figure, which may tell only bounds.
 *
 * @param group what was looked at under the same circumstances has the same group
 * @param low the figure is not below this
 * @param high nor above this; as {@code low} where it is known
 */
record Observation(Object group, double low, double high) {
    Observation {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a figure between " + low + " and " + high);
        }
    }

    static Observation exact(Object group, double figure) {
        return new Observation(group, figure, figure);
    }
}
