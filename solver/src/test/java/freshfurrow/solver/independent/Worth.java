package freshfurrow.solver.independent;

import java.util.Comparator;

/** What lists are worth by the timeline, 0 or less on each level: a little on one outweighs all of the next. */
record Worth(long hard, long medium, long soft) implements Comparable<Worth> {
    static final Worth LEAST = new Worth(Long.MIN_VALUE, 0, 0);

    private static final Comparator<Worth> LEVEL_BY_LEVEL = Comparator.comparingLong(Worth::hard)
            .thenComparingLong(Worth::medium)
            .thenComparingLong(Worth::soft);

    @Override
    public int compareTo(Worth other) {
        return LEVEL_BY_LEVEL.compare(this, other);
    }
}
