package freshfurrow.model.timeline.rigs;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.state.CompostLots;
import freshfurrow.model.timeline.tables.RigTable;
import org.jspecify.annotations.Nullable;

/**
 * The batches of one load or mix: as few as the drum allows, all alike, each followed by a clean. The clean after the last one comes
 * after the transfer and is not part of the chain.
 */
public final class Extraction {
    private final RigTable rigs;

    // the chain
    private Calendar hours;
    private int batchS;
    private int cleanS;
    int batches;
    long compostMg;

    // where it lies, set by backward()
    int start;
    int oldestEnd;

    public Extraction(RigTable rigs) {
        this.rigs = rigs;
    }

    /** 0 when all of the mix is there. */
    public int batches() {
        return batches;
    }

    public long compostMg() {
        return compostMg;
    }

    /** Of the first batch; told once {@link #backward} has laid the chain, as {@link #oldestEnd}. */
    public int start() {
        return start;
    }

    /** Of the first batch. */
    public int oldestEnd() {
        return oldestEnd;
    }

    /** No batches at all when the compost that is still to be extracted is too little for one. */
    public void planRest(int rig, long mg) {
        if (mg <= CompostLots.LEAST_MG) {
            none();
        } else {
            plan(rig, mg);
        }
    }

    /** No batches: all of the mix is there. */
    public void none() {
        batches = 0;
        compostMg = 0;
    }

    public void plan(int rig, long mg) {
        hours = rigs.hours(rig);
        cleanS = rigs.cleanS(rig);
        compostMg = Math.max(CompostLots.LEAST_MG, mg);
        batches = batches(rig, compostMg);
        batchS = batchS(rig, compostMg, batches);
    }

    /** From the start of the first batch to the end of the last in one go, s. */
    public int chainS() {
        return batches * (batchS + cleanS) - cleanS;
    }

    /** The same of batches for that much compost, s. */
    public int chainS(int rig, long mg) {
        int count = batches(rig, mg);
        return count * (batchS(rig, mg, count) + rigs.cleanS(rig)) - rigs.cleanS(rig);
    }

    private int batches(int rig, long mg) {
        long needed = mg - CompostLots.LEAST_MG;
        int count = Math.max(1, (int) rigs.batches(rig, needed));
        return count * rigs.batchMg(rig) < needed ? count + 1 : count;
    }

    /** Each of so many batches takes its share of a full one's time, s. */
    private int batchS(int rig, long mg, int count) {
        double share = Math.min(1.0, rigs.batches(rig, mg) / count);
        return Math.max(rigs.leastBatchS(rig), (int) Math.ceil(share * rigs.batchS(rig)));
    }

    /** When the last batch ends at the earliest if the first may start at {@code ready}. */
    int forward(int ready) {
        int chain = chainS();
        int period = hours.periodAt(ready);
        int s = Math.max(ready, hours.startOf(period));
        if (s + chain <= hours.endOf(period)) {
            return s + chain;
        }
        int t = ready;
        for (int batch = 1; batch <= batches; batch++) {
            t = hours.earliest(t, batchS) + batchS;
            if (batch < batches) {
                t = hours.earliest(t, cleanS) + cleanS;
            }
            if (t >= Calendar.NEVER) {
                return Calendar.NEVER;
            }
        }
        return t;
    }

    /** Lays the chain as late as possible before {@code end}; the caller knows that it fits. */
    void backward(int end, int @Nullable [] startsOrNull) {
        int lastEnd = hours.latest(end, batchS);
        start = lastEnd - chainS();
        if (startsOrNull == null && start >= hours.startOf(hours.periodAt(lastEnd - 1))) {
            oldestEnd = start + batchS;
            return;
        }
        int t = end;
        for (int batch = batches; batch >= 1; batch--) {
            int batchEnd = hours.latest(t, batchS);
            start = batchEnd - batchS;
            oldestEnd = batchEnd;
            if (startsOrNull != null) {
                startsOrNull[batch - 1] = start;
            }
            if (batch > 1) {
                t = hours.latest(start, cleanS) - cleanS;
            }
        }
    }

    /** What each batch takes, s. */
    public int batchS() {
        return batchS;
    }

    /** Compost of a batch, counted from 1, mg. */
    long compostOf(int batch) {
        return compostUpTo(batch) - compostUpTo(batch - 1);
    }

    /** Compost of the first batches, mg: so that all come to the whole. */
    public long compostUpTo(int batch) {
        return compostMg * batch / batches;
    }

    /** Water of a batch, counted from 1, mL: its share of a full drum. */
    public long waterOf(int batch, int rig) {
        return Math.min(rigs.drumMl(rig), Math.round((double) rigs.drumMl(rig) * compostOf(batch) / rigs.batchMg(rig)));
    }
}
