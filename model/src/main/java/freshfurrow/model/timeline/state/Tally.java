package freshfurrow.model.timeline.state;

/** What adds up while a season is played out: a block of the {@link State}. */
public final class Tally {
    public static final int FILLS = 0;
    public static final int WATER_TRIPS = 1;
    public static final int BATCHES = 2;
    public static final int WAIT_S = 3;
    public static final int DRIVE_S = 4;
    public static final int DRIVE_M = 5;
    public static final int DUMPED_MG = 6;
    public static final int DUMPED_ML = 7;
    public static final int COMPOST_MG = 8;
    public static final int PLANTED_DM2 = 9;
    public static final int UNSERVED_DM2 = 10;
    public static final int LATE_DM2_DAYS = 11;
    public static final int WEIGHTED_LATE_DM2_DAYS = 12;
    public static final int EARLY_DM2_DAYS = 13;
    /** The least time between the last drop of a load and its deadline; {@link Long#MAX_VALUE} before the first load. */
    public static final int SMALLEST_MARGIN_S = 14;

    public static final int FINISH_S = 15;
    public static final int MOVED_FIELDS = 16;
    public static final int SCRAPS = 17;
    public static final int CALL_OUTS = 18;
    public static final int OVERTIME_S = 19;
    public static final int COMPOST_TRIPS = 20;
    public static final int UNTREATED_DM2 = 21;
    public static final int WEIGHTED_UNTREATED_DM2 = 22;
    /** Fields begun on the day that they are fixed to. */
    public static final int FIXED_KEPT = 23;

    public static final int DRAWN_ML = 24;
    /** Hours at work, told only of seasons that are judged by money. */
    public static final int WORK_S = 25;

    /** What planters stand for closed fields while another could be planted. */
    public static final int IDLE_S = 26;

    public static final int SIZE = 27;

    private final long[] v;

    /** @param v begins with the counts */
    Tally(long[] v) {
        this.v = v;
    }

    void reset() {
        v[SMALLEST_MARGIN_S] = Long.MAX_VALUE;
    }

    public void add(int count, long amount) {
        v[count] += amount;
    }

    public long get(int count) {
        return v[count];
    }

    public void margin(int seconds) {
        v[SMALLEST_MARGIN_S] = Math.min(v[SMALLEST_MARGIN_S], seconds);
    }

    public void finished(int s) {
        v[FINISH_S] = Math.max(v[FINISH_S], s);
    }
}
