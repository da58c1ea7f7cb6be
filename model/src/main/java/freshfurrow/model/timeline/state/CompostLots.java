package freshfurrow.model.timeline.state;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.tables.CompostTable;
import freshfurrow.model.timeline.tables.Leeway;

/** What is left of compost in lots, used in the order in which they become available: a block of the {@link State}. */
public final class CompostLots {
    /** One gram, the least that a plan file tells: there is no batch of less, and no lot of no more (mg). */
    public static final long LEAST_MG = 1_000;

    private final CompostTable compost;
    private final long[] v;
    private final int first;

    CompostLots(CompostTable compost, long[] v, int first) {
        this.compost = compost;
        this.v = v;
        this.first = first;
    }

    void reset() {
        for (int lot = 0; lot < compost.count(); lot++) {
            v[first + lot] = compost.mg(lot);
        }
    }

    /** Left in all lots that are there at {@code t}, mg; 0 when it is too little for a batch. */
    public long available(int t) {
        long mg = 0;
        for (int lot = 0; lot < compost.count() && compost.fromS(lot) <= t; lot++) {
            mg += v[first + lot];
        }
        return mg > LEAST_MG ? mg : 0;
    }

    /**
     * Whether a load is made of what there is: it may lack a gram, or a thousandth up to {@link Leeway#MOST_LACKING_MG}, lest the rounding
     * of lots and areas leave the last of a field unplanted.
     */
    public static boolean isEnough(long thereMg, long askedMg) {
        long thousandth = Math.min(Leeway.MOST_LACKING_MG, askedMg - Leeway.least(askedMg));
        return askedMg <= thereMg + Math.max(LEAST_MG, thousandth);
    }

    /** When the first lot that holds enough for a batch is there, s; {@link Calendar#NEVER} when there is none. */
    public int availableFrom() {
        for (int lot = 0; lot < compost.count(); lot++) {
            if (v[first + lot] > LEAST_MG) {
                return compost.fromS(lot);
            }
        }
        return Calendar.NEVER;
    }

    /** Takes compost out of lots that hold enough. */
    public void take(long mg) {
        long wanted = mg;
        for (int lot = 0; wanted > 0 && lot < compost.count(); lot++) {
            long taken = Math.min(wanted, v[first + lot]);
            if (taken > 0) {
                v[first + lot] -= taken;
                wanted -= taken;
            }
        }
        if (wanted > 0) {
            throw new IllegalStateException("a batch takes " + wanted + " mg more compost than there is");
        }
    }
}
