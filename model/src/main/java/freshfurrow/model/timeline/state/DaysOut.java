package freshfurrow.model.timeline.state;

import freshfurrow.model.timeline.calendar.Calendars;

/**
 * The day on which a machine was called out last and did not yet do what machines are called out for, and the last day on which it did: two
 * slots of its block of the {@link State}. Days count from 1, so that 0 is none.
 */
final class DaysOut {
    static final int SIZE = 2;

    private DaysOut() {}

    /** It leaves its stand at a time. Returns how many call-outs for nothing that tells of: 1 at the most. */
    static int left(long[] v, int slot, int s) {
        long day = s / Calendars.DAY_S + 1L;
        if (v[slot] == day || v[slot + 1] == day) {
            return 0;
        }
        int forNothing = forNothing(v, slot);
        v[slot] = day;
        return forNothing;
    }

    /** It does what it came for at a time. */
    static void worked(long[] v, int slot, int s) {
        long day = s / Calendars.DAY_S + 1L;
        v[slot + 1] = day;
        if (v[slot] == day) {
            v[slot] = 0;
        }
    }

    /** Whether it was called out for nothing, 1 or 0. */
    static int forNothing(long[] v, int slot) {
        return v[slot] > 0 ? 1 : 0;
    }
}
