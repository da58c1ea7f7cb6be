package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.DRAWS;
import static freshfurrow.model.timeline.State.FORGOTTEN_UNTIL;
import static freshfurrow.model.timeline.State.LAST_END;
import static freshfurrow.model.timeline.State.REMEMBERED_DRAWS;
import static freshfurrow.model.timeline.State.USED_ML;

import java.util.Arrays;

/** Draws of water: hoses, hours and daily limits. */
final class WaterPoints {
    private final CompiledSeason season;
    private final State state;
    private final long[] v;

    // by point: from one time to another no draw can begin of so much, or of more, in such hours
    private final int[] noneFrom;
    private final int[] noneUntil;
    private final long[] noneOfLackMl;
    private final long[] noneOfRoomMl;
    private final Calendar[] noneInHours;

    /** Litres of the draw that {@link #earliestDraw} found last, mL. */
    long drawMl;

    /** Its duration, s. */
    int drawS;

    WaterPoints(CompiledSeason season, State state) {
        this.season = season;
        this.state = state;
        this.v = state.v;
        noneFrom = new int[season.water.count()];
        noneUntil = new int[season.water.count()];
        noneOfLackMl = new long[season.water.count()];
        noneOfRoomMl = new long[season.water.count()];
        noneInHours = new Calendar[season.water.count()];
    }

    /** A draw of at least {@code lackMl}, and of up to {@code roomMl} where there is a limit, takes no less time there, s. */
    int shortestDrawS(int point, long lackMl, long roomMl) {
        return season.water.leastDrawS(point, season.water.hasLimit(point) ? lackMl : roomMl);
    }

    /**
     * When a rig that is at the point from {@code t} on can begin a draw of at least {@code lackMl}; sets {@link #drawMl} to
     * as much up to {@code roomMl} as the date's limit leaves.
     */
    int earliestDraw(int point, int t, long lackMl, long roomMl, Calendar rigHours) {
        int from = Math.max(t, (int) v[state.point(point) + FORGOTTEN_UNTIL]);
        int found = search(point, from, lackMl, roomMl, rigHours);
        if (found > soonestDraw(point, from, lackMl, roomMl, rigHours)) {
            noneFrom[point] = from;
            noneUntil[point] = found;
            noneOfLackMl[point] = lackMl;
            noneOfRoomMl[point] = roomMl;
            noneInHours[point] = rigHours;
        }
        return found;
    }

    /** Draws found so far tell nothing any more: something has been drawn, or the season is played out afresh. */
    void forget() {
        Arrays.fill(noneUntil, 0);
    }

    /** A time before which {@link #earliestDraw} finds nothing, going by what it has found so far. */
    int soonestDraw(int point, int t, long lackMl, long roomMl, Calendar rigHours) {
        boolean none = t >= noneFrom[point]
                && t < noneUntil[point]
                && lackMl >= noneOfLackMl[point]
                && roomMl >= noneOfRoomMl[point]
                && rigHours == noneInHours[point];
        return none ? noneUntil[point] : t;
    }

    private int search(int point, int from, long lackMl, long roomMl, Calendar rigHours) {
        int s = from;
        while (s < NEVER) {
            s = soonestDraw(point, s, lackMl, roomMl, rigHours);
            int day = s / Calendars.DAY_S;
            if (day >= season.days) {
                return NEVER;
            }
            long left = season.water.dailyLimitMl(point) - v[state.point(point) + USED_ML + day];
            if (left < lackMl) {
                s = (day + 1) * Calendars.DAY_S;
                continue;
            }
            drawMl = Math.min(roomMl, left);
            drawS = season.water.drawS(point, drawMl);
            int found = rigHours.earliest(s, drawS);
            found = season.water.hours(point).earliest(found, drawS);
            if (found == s) {
                found = hoseFree(point, s, drawS);
            }
            if (found == s) {
                return s;
            }
            s = found;
        }
        return NEVER;
    }

    void book(int point, int start, int duration, long ml) {
        int base = state.point(point);
        v[base + USED_ML + start / Calendars.DAY_S] += ml;
        int draws = (int) v[base + DRAWS];
        int slot = base + state.drawsOffset + 2 * (draws % REMEMBERED_DRAWS);
        if (draws >= REMEMBERED_DRAWS) {
            v[base + FORGOTTEN_UNTIL] = Math.max(v[base + FORGOTTEN_UNTIL], v[slot + 1]);
        }
        v[slot] = start;
        v[slot + 1] = (long) start + duration;
        v[base + DRAWS]++;
        v[base + LAST_END] = Math.max(v[base + LAST_END], start + duration);
    }

    /** The first moment at or after {@code s} that may find a hose free for {@code duration}; {@code s} itself if it does. */
    private int hoseFree(int point, int s, int duration) {
        int base = state.point(point);
        int hoses = season.water.hoses(point);
        if (s >= v[base + LAST_END] || overlapping(base, s, s + duration) < hoses) {
            return s;
        }
        int first = base + state.drawsOffset;
        int end = endOfDraws(base);
        long free = firstEnd(base, s, hoses);
        for (int slot = first; slot < end; slot += 2) {
            if (v[slot] > s && v[slot] < s + duration) {
                free = Math.max(free, firstEnd(base, v[slot], hoses));
            }
        }
        return (int) Math.max(s, free);
    }

    /** When the first of the draws ends that run at a moment; -1 when they leave a hose free. */
    private long firstEnd(int base, long moment, int hoses) {
        int running = 0;
        long soonest = NEVER;
        int end = endOfDraws(base);
        for (int slot = base + state.drawsOffset; slot < end; slot += 2) {
            if (v[slot] <= moment && moment < v[slot + 1]) {
                running++;
                soonest = Math.min(soonest, v[slot + 1]);
            }
        }
        return running < hoses ? -1 : soonest;
    }

    /** Draws that run at any moment from {@code from} to {@code to}. */
    private int overlapping(int base, int from, int to) {
        int draws = 0;
        int end = endOfDraws(base);
        for (int slot = base + state.drawsOffset; slot < end; slot += 2) {
            if (v[slot] < to && v[slot + 1] > from) {
                draws++;
            }
        }
        return draws;
    }

    private int endOfDraws(int base) {
        return base + state.drawsOffset + 2 * (int) Math.min(v[base + DRAWS], REMEMBERED_DRAWS);
    }
}
