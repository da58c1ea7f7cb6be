package freshfurrow.model.timeline.state;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.tables.WaterTable;

/** What has been drawn at water points, on which days and by how many hoses: a block of the {@link State} for each. */
public final class Draws {
    private static final int LAST_END = 0;
    private static final int FORGOTTEN_UNTIL = 1;
    private static final int COUNT = 2;
    private static final int USED_ML = 3;
    private static final int REMEMBERED = 16;

    private final WaterTable water;
    private final long[] v;
    private final int first;
    private final int size;
    /** From a point's block to its latest draws, each with its start and end. */
    private final int latest;

    Draws(WaterTable water, int days, long[] v, int first) {
        this.water = water;
        this.v = v;
        this.first = first;
        this.size = size(days);
        this.latest = USED_ML + days;
    }

    /** Of a point's block. */
    static int size(int days) {
        return USED_ML + days + 2 * REMEMBERED;
    }

    private int at(int point) {
        return first + point * size;
    }

    /** Drawn on a day. */
    public long usedMl(int point, int day) {
        return v[at(point) + USED_ML + day];
    }

    void use(int point, int day, long ml) {
        v[at(point) + USED_ML + day] += ml;
    }

    /** No draw is laid before this, as what runs there may not be known any more, s. */
    public int forgottenUntilS(int point) {
        return (int) v[at(point) + FORGOTTEN_UNTIL];
    }

    public void book(int point, int start, int duration, long ml) {
        use(point, start / Calendars.DAY_S, ml);
        int at = at(point);
        int draws = (int) v[at + COUNT];
        int slot = at + latest + 2 * (draws % REMEMBERED);
        if (draws >= REMEMBERED) {
            v[at + FORGOTTEN_UNTIL] = Math.max(v[at + FORGOTTEN_UNTIL], v[slot + 1]);
        }
        v[slot] = start;
        v[slot + 1] = (long) start + duration;
        v[at + COUNT]++;
        v[at + LAST_END] = Math.max(v[at + LAST_END], start + duration);
    }

    /** The first moment at or after {@code s} that may find a hose free for {@code duration}; {@code s} itself if it does. */
    public int hoseFree(int point, int s, int duration) {
        int at = at(point);
        int hoses = water.hoses(point);
        if (s >= v[at + LAST_END] || overlapping(at, s, s + duration) < hoses) {
            return s;
        }
        int end = endOfDraws(at);
        long free = firstEnd(at, s, hoses);
        for (int slot = at + latest; slot < end; slot += 2) {
            if (v[slot] > s && v[slot] < s + duration) {
                free = Math.max(free, firstEnd(at, v[slot], hoses));
            }
        }
        return (int) Math.max(s, free);
    }

    /** When the first of the draws ends that run at a moment; -1 when they leave a hose free. */
    private long firstEnd(int at, long moment, int hoses) {
        int running = 0;
        long soonest = NEVER;
        int end = endOfDraws(at);
        for (int slot = at + latest; slot < end; slot += 2) {
            if (v[slot] <= moment && moment < v[slot + 1]) {
                running++;
                soonest = Math.min(soonest, v[slot + 1]);
            }
        }
        return running < hoses ? -1 : soonest;
    }

    /** Draws that run at any moment from {@code from} to {@code to}. */
    private int overlapping(int at, int from, int to) {
        int draws = 0;
        int end = endOfDraws(at);
        for (int slot = at + latest; slot < end; slot += 2) {
            if (v[slot] < to && v[slot + 1] > from) {
                draws++;
            }
        }
        return draws;
    }

    private int endOfDraws(int at) {
        return at + latest + 2 * (int) Math.min(v[at + COUNT], REMEMBERED);
    }
}
