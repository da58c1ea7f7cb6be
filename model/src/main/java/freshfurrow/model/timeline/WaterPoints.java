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

    private final int leastTreatmentS;
    private final double leastDrawSPerMl;

    /** Litres of the draw that {@link #earliestDraw} found last, mL. */
    long drawMl;

    /** Its duration, s. */
    int drawS;

    WaterPoints(CompiledSeason season, State state) {
        this.season = season;
        this.state = state;
        this.v = state.v;
        leastTreatmentS = Arrays.stream(season.treatmentS).min().orElse(0);
        leastDrawSPerMl = Arrays.stream(season.drawSPerMl).min().orElse(0);
    }

    /** No point gives so much in less time, s. */
    int shortestDrawS(long ml) {
        return leastTreatmentS + (int) (ml * leastDrawSPerMl);
    }

    /**
     * When a rig that is at the point from {@code t} on can begin a draw of at least {@code lackMl}; sets {@link #drawMl} to
     * as much up to {@code roomMl} as the date's limit leaves.
     */
    int earliestDraw(int point, int t, long lackMl, long roomMl, Calendar rigHours) {
        int s = Math.max(t, (int) v[state.point(point) + FORGOTTEN_UNTIL]);
        while (s < NEVER) {
            int day = s / Calendars.DAY_S;
            if (day >= season.days) {
                return NEVER;
            }
            long left = season.dailyLimitMl[point] - v[state.point(point) + USED_ML + day];
            if (left < lackMl) {
                s = (day + 1) * Calendars.DAY_S;
                continue;
            }
            drawMl = Math.min(roomMl, left);
            drawS = season.treatmentS[point] + (int) Math.ceil(drawMl * season.drawSPerMl[point]);
            int found = rigHours.earliest(s, drawS);
            found = season.pointHours[point].earliest(found, drawS);
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
        if (s >= v[base + LAST_END] || busiest(base, s, s + duration) < season.hoses[point]) {
            return s;
        }
        long soonest = NEVER;
        int first = base + state.drawsOffset;
        int end = first + 2 * (int) Math.min(v[base + DRAWS], REMEMBERED_DRAWS);
        for (int slot = first; slot < end; slot += 2) {
            if (v[slot + 1] > s && v[slot] < s + duration) {
                soonest = Math.min(soonest, v[slot + 1]);
            }
        }
        return (int) soonest;
    }

    /** The most draws that run at once at any moment from {@code from} to {@code to}. */
    private int busiest(int base, int from, int to) {
        int first = base + state.drawsOffset;
        int end = first + 2 * (int) Math.min(v[base + DRAWS], REMEMBERED_DRAWS);
        int most = 0;
        for (int a = first - 2; a < end; a += 2) {
            long moment = a < first ? from : v[a];
            if (moment < from || moment >= to) {
                continue;
            }
            int running = 0;
            for (int b = first; b < end; b += 2) {
                if (v[b] <= moment && moment < v[b + 1]) {
                    running++;
                }
            }
            most = Math.max(most, running);
        }
        return most;
    }
}
