package freshfurrow.model.timeline;

import freshfurrow.model.timeline.planters.FieldOrder;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * States kept while the season is played out for one order of fields after another, so that the next need not be played from the
 * season's beginning but from the last state by which nothing had been read of the lists that differs.
 *
 * <p>The base is the order that a search goes out from, the trial the one played last. A trial begins at a state of the base and
 * shares with it all states up to there.
 */
final class Checkpoints {
    private static final int SLOTS = 128;
    private static final int NONE = -1;

    private final State state;
    private final int[] difference;

    private FieldOrder baseOrder;
    private FieldOrder trialOrder;
    private long[][] base = new long[SLOTS][0];
    private long[][] trial = new long[SLOTS][0];
    private int baseCount;
    private int trialCount;

    /** The last slot of the base that the trial shares. */
    private int shared = NONE;

    /** Requests from one kept state to the next: as few as the slots allow in the longest season played so far. */
    private int spacing = 1;

    private int served;

    Checkpoints(SeasonTables tables, State state) {
        this.state = state;
        difference = new int[tables.planters().count()];
        baseOrder = new FieldOrder(tables);
        trialOrder = new FieldOrder(tables);
    }

    /** Puts the state where a trial of the order can begin; false when that is the season's beginning. */
    boolean restart(FieldOrder order) {
        if (baseCount == 0) {
            adopt();
        }
        for (int p = 0; p < difference.length; p++) {
            difference[p] = order.firstDifference(baseOrder, p);
        }
        shared = lastUnaffected();
        trialCount = shared + 1;
        trialOrder.copy(order);
        served = trialCount * spacing;
        if (shared == NONE) {
            return false;
        }
        state.putBack(base[shared]);
        return true;
    }

    /** Keeps the state after a request that was served, when it is time; whether it did. */
    boolean served() {
        served++;
        if (served == (SLOTS + 1) * spacing) {
            thinOut();
        }
        if (served % spacing == 0) {
            trial[trialCount] = state.keepIn(trial[trialCount]);
            trialCount++;
            return true;
        }
        return false;
    }

    /** Makes the trial the base. */
    void adopt() {
        for (int slot = shared + 1; slot < trialCount; slot++) {
            swap(base, slot, trial, slot);
        }
        baseCount = trialCount;
        FieldOrder order = baseOrder;
        baseOrder = trialOrder;
        trialOrder = order;
        shared = trialCount - 1;
    }

    private int lastUnaffected() {
        int unaffected = NONE;
        int affected = baseCount;
        while (affected - unaffected > 1) {
            int middle = (unaffected + affected) >>> 1;
            if (isUnaffected(base[middle])) {
                unaffected = middle;
            } else {
                affected = middle;
            }
        }
        return unaffected;
    }

    private boolean isUnaffected(long[] kept) {
        for (int p = 0; p < difference.length; p++) {
            if (state.planters().lookedTo(kept, p) > difference[p]) {
                return false;
            }
        }
        return true;
    }

    /** Keeps every second state only. */
    private void thinOut() {
        for (int slot = 0; 2 * slot + 1 < SLOTS; slot++) {
            swap(base, slot, base, 2 * slot + 1);
            swap(trial, slot, trial, 2 * slot + 1);
        }
        spacing *= 2;
        baseCount /= 2;
        trialCount /= 2;
        shared = (shared + 1) / 2 - 1;
    }

    private static void swap(long[][] one, int i, long[][] other, int j) {
        long[] kept = one[i];
        one[i] = other[j];
        other[j] = kept;
    }
}
