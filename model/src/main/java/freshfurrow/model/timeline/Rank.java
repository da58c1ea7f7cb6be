package freshfurrow.model.timeline;

/** Which of two deliveries is preferred, as one number: the earlier one; of two that start at the same time that with less driving. */
final class Rank {
    /** After all ranks of deliveries. */
    static final long OUT = Long.MAX_VALUE;

    private Rank() {}

    /** Of a transfer that starts then, s, after so much driving, m. */
    static long of(int start, int metres) {
        return (long) start << Integer.SIZE | metres;
    }
}
