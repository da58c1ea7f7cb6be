package freshfurrow.model.timeline.mix;

/** Which of two deliveries is preferred, as one number: the earlier one; of two that start at the same time that with less driving. */
public final class Rank {
    /** After all ranks of deliveries. */
    public static final long OUT = Long.MAX_VALUE;

    private Rank() {}

    /** Of a transfer that starts then, s, after so much driving, m. */
    public static long of(int start, int metres) {
        return (long) start << Integer.SIZE | metres;
    }
}
