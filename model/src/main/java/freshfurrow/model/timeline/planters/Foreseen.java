package freshfurrow.model.timeline.planters;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import java.util.Arrays;

/**
 * When planters that broke down were to be done with their loads, for all that anybody could know before. Who makes a load for one looks how far it
 * is, but cannot see a breakdown coming.
 */
public final class Foreseen {
    private final int[] doneS;
    private final int[] downS;

    public Foreseen(int planters) {
        doneS = new int[planters];
        downS = new int[planters];
        forgetAll();
    }

    /** The season is played out afresh. */
    public void forgetAll() {
        Arrays.fill(downS, NEVER);
    }

    void brokeDown(int planter, int s, int wouldBeDoneS) {
        downS[planter] = s;
        doneS[planter] = wouldBeDoneS;
    }

    /** Whether a planter broke down while it planted out of its last load, and nobody was told of that yet who made a load for it. */
    public boolean isUnheardOf(int planter) {
        return downS[planter] < NEVER;
    }

    /** When it broke down, s. */
    public int downS(int planter) {
        return downS[planter];
    }

    /** When it would have been done with its last load, s. */
    public int doneS(int planter) {
        return doneS[planter];
    }

    /** Nothing is to be heard of any more. */
    public void heard(int planter) {
        downS[planter] = NEVER;
    }
}
