package freshfurrow.model.timeline;

/** What adds up while a season is played out: a block of the {@link State}. */
final class Tally {
    static final int FILLS = 0;
    static final int WATER_TRIPS = 1;
    static final int BATCHES = 2;
    static final int WAIT_S = 3;
    static final int DRIVE_S = 4;
    static final int DRIVE_M = 5;
    static final int DUMPED_MG = 6;
    static final int DUMPED_ML = 7;
    static final int COMPOST_MG = 8;
    static final int PLANTED_DM2 = 9;
    static final int UNSERVED_DM2 = 10;
    static final int LATE_DM2_DAYS = 11;
    static final int WEIGHTED_LATE_DM2_DAYS = 12;
    static final int EARLY_DM2_DAYS = 13;
    /** The least time between the last drop of a load and its deadline; {@link Long#MAX_VALUE} before the first load. */
    static final int SMALLEST_MARGIN_S = 14;

    static final int FINISH_S = 15;
    static final int MOVED_FIELDS = 16;
    static final int SIZE = 17;

    private final long[] v;

    /** @param v begins with the counts */
    Tally(long[] v) {
        this.v = v;
    }

    void reset() {
        v[SMALLEST_MARGIN_S] = Long.MAX_VALUE;
    }

    void add(int count, long amount) {
        v[count] += amount;
    }

    long get(int count) {
        return v[count];
    }

    void margin(int seconds) {
        v[SMALLEST_MARGIN_S] = Math.min(v[SMALLEST_MARGIN_S], seconds);
    }

    void finished(int s) {
        v[FINISH_S] = Math.max(v[FINISH_S], s);
    }
}
