package freshfurrow.model.timeline.state;

import static freshfurrow.model.quantity.Factors.MG_PER_G;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.tables.Beginning;
import freshfurrow.model.timeline.tables.CompostTable;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.stream.IntStream;

/**
 * What is left of compost in lots, used in the order in which they become available, and what rigs have on board where they fetch it: a
 * block of the {@link State}.
 */
public final class CompostLots {
    /** One gram, the least that a plan file tells: there is no batch of less, and no lot of no more (mg). */
    public static final long LEAST_MG = 1_000;

    private final CompostTable compost;
    private final RigTable rigs;
    private final Beginning beginning;
    private final Tally tally;
    private final boolean fetched;
    /** For all fields, less what is made already. */
    private final long neededMg;

    /** What all rigs together hold. */
    private final long allHoldMg;

    private final long[] v;
    private final int first;
    private final int onBoard;

    CompostLots(SeasonTables tables, Tally tally, long[] v, int first) {
        this.compost = tables.compost();
        this.rigs = tables.rigs();
        this.beginning = tables.beginning();
        this.tally = tally;
        this.fetched = compost.isFetched();
        this.neededMg = tables.compostNeededMg();
        this.allHoldMg =
                IntStream.range(0, rigs.count()).mapToLong(rigs::mostCompostMg).sum();
        this.v = v;
        this.first = first;
        this.onBoard = first + compost.count();
    }

    static int size(SeasonTables tables) {
        return tables.compost().count()
                + (tables.compost().isFetched() ? tables.rigs().count() : 0);
    }

    void reset() {
        for (int lot = 0; lot < compost.count(); lot++) {
            v[first + lot] = compost.mg(lot);
        }
        for (int rig = 0; fetched && rig < rigs.count(); rig++) {
            v[onBoard + rig] = beginning.compostMg(rig);
        }
    }

    /** Whether rigs fetch compost where it lies; else they have what lots hold wherever they make batches. */
    public boolean areFetched() {
        return fetched;
    }

    /** Left in all lots that are there at {@code t}, mg; 0 when it is too little for a batch. */
    private long available(int t) {
        long mg = 0;
        for (int lot = 0; lot < compost.count() && compost.fromS(lot) <= t; lot++) {
            mg += v[first + lot];
        }
        return mg > LEAST_MG ? mg : 0;
    }

    /** What a rig could make a load of at the most, mg: of what lots hold now or later, no more than it holds where it fetches it. */
    public long mostMg(int rig) {
        return fetched ? Math.min(rigs.mostCompostMg(rig), leftMg(rig)) : available(Calendar.NEVER);
    }

    /** All that a rig could make loads of, one after the other, were it the only one, mg. */
    public long leftMg(int rig) {
        if (!fetched) {
            return available(Calendar.NEVER);
        }
        long mg = v[onBoard + rig];
        for (int lot = 0; lot < compost.count(); lot++) {
            mg += inLotMg(lot);
        }
        return mg;
    }

    /** All that is left, in lots and on board of all rigs, mg. */
    public long allMg() {
        return available(Calendar.NEVER) + onBoardMg();
    }

    /**
     * What a rig has for batches, mg.
     *
     * @param start of the first batch, s
     * @param fetchedMg what it fetches before
     */
    public long thereMg(int rig, int start, long fetchedMg) {
        return fetched ? v[onBoard + rig] + fetchedMg : available(start);
    }

    /** What a rig has on board, where it fetches compost, mg. */
    public long onBoardMg(int rig) {
        return v[onBoard + rig];
    }

    /** What can be fetched out of a lot, mg: whole grams. */
    public long inLotMg(int lot) {
        return v[first + lot] > LEAST_MG ? v[first + lot] / MG_PER_G * MG_PER_G : 0;
    }

    /**
     * What a rig may load for the fields that are still to be planted, mg: what they need beyond what all rigs have on board, or, if that is
     * more, what it lacks of its share of all that they need.
     */
    public long wantedMg(int rig) {
        long mg = neededMg - tally.get(Tally.COMPOST_MG) + tally.get(Tally.DUMPED_MG);
        return Math.max(mg - onBoardMg(), mg / rigs.count() - v[onBoard + rig]);
    }

    private long onBoardMg() {
        long mg = 0;
        for (int rig = 0; fetched && rig < rigs.count(); rig++) {
            mg += v[onBoard + rig];
        }
        return mg;
    }

    /**
     * What a rig may load for all rigs to have the same of what lies in lots at {@code t} and what they have on board, mg; no limit where
     * nothing lies there, or enough for all that rigs hold.
     */
    public long shareMg(int rig, int t) {
        long thereMg = 0;
        for (int lot = 0; lot < compost.count() && compost.fromS(lot) <= t; lot++) {
            thereMg += inLotMg(lot);
        }
        if (thereMg == 0 || thereMg >= allHoldMg) {
            return Long.MAX_VALUE;
        }
        return (thereMg + onBoardMg()) / rigs.count() - v[onBoard + rig];
    }

    /**
     * Whether a load is made of what there is: it may lack a gram, or a thousandth up to {@link Leeway#MOST_LACKING_MG}, lest the rounding
     * of lots and areas leave the last of a field unplanted.
     */
    public static boolean isEnough(long thereMg, long askedMg) {
        long thousandth = Math.min(Leeway.MOST_LACKING_MG, askedMg - Leeway.least(askedMg));
        return askedMg <= thereMg + Math.max(LEAST_MG, thousandth);
    }

    /** What a rig has to fetch first for batches of so much compost, mg: all that it lacks, but none for the sake of less than a thousandth. */
    public long lackMg(int rig, long askedMg) {
        if (!fetched || askedMg == 0) {
            return 0;
        }
        long there = v[onBoard + rig];
        return there >= Leeway.least(askedMg) && isEnough(there, askedMg) ? 0 : askedMg - there;
    }

    /**
     * When there is compost: at once where a rig has enough for a batch on board, else when the first lot that holds so much is there, s; {@link
     * Calendar#NEVER} when there is none.
     */
    public int availableFrom() {
        for (int rig = 0; fetched && rig < rigs.count(); rig++) {
            if (v[onBoard + rig] > LEAST_MG) {
                return 0;
            }
        }
        for (int lot = 0; lot < compost.count(); lot++) {
            if (v[first + lot] > LEAST_MG) {
                return compost.fromS(lot);
            }
        }
        return Calendar.NEVER;
    }

    /** From when on the first lot that has some can be loaded, s; {@link Calendar#NEVER} when none has. */
    public int loadableFromS() {
        for (int lot = 0; lot < compost.count(); lot++) {
            if (inLotMg(lot) > 0) {
                return compost.fromS(lot);
            }
        }
        return Calendar.NEVER;
    }

    /** A rig loads compost of a lot, no more than {@link #inLotMg}. */
    public void load(int rig, int lot, long mg) {
        v[first + lot] -= mg;
        v[onBoard + rig] += mg;
    }

    /** A rig's batches take compost: off board, or out of lots that hold enough. */
    public void take(int rig, long mg) {
        long lacking = fetched ? takeOffBoard(rig, mg) : takeOutOfLots(mg);
        if (lacking > 0) {
            throw new IllegalStateException("a batch takes " + lacking + " mg more compost than there is");
        }
    }

    private long takeOffBoard(int rig, long mg) {
        v[onBoard + rig] -= mg;
        return -v[onBoard + rig];
    }

    private long takeOutOfLots(long mg) {
        long wanted = mg;
        for (int lot = 0; wanted > 0 && lot < compost.count(); lot++) {
            long taken = Math.min(wanted, v[first + lot]);
            if (taken > 0) {
                v[first + lot] -= taken;
                wanted -= taken;
            }
        }
        return wanted;
    }
}
