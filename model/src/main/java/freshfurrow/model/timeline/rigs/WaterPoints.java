package freshfurrow.model.timeline.rigs;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.state.Draws;
import freshfurrow.model.timeline.tables.SeasonTables;
import freshfurrow.model.timeline.tables.WaterTable;
import java.util.Arrays;

/** When water can be drawn: hoses, hours and daily limits. What has been found of one draw shortens the search for the next. */
public final class WaterPoints {
    private final WaterTable water;
    private final int days;
    private final Draws draws;

    // by point: from one time to another no draw can begin of so much, or of more, in such hours
    private final int[] noneFrom;
    private final int[] noneUntil;
    private final long[] noneOfLackMl;
    private final long[] noneOfRoomMl;
    private final Calendar[] noneInHours;

    public WaterPoints(SeasonTables tables, Draws draws) {
        this.water = tables.water();
        this.days = tables.season().days();
        this.draws = draws;
        noneFrom = new int[water.count()];
        noneUntil = new int[water.count()];
        noneOfLackMl = new long[water.count()];
        noneOfRoomMl = new long[water.count()];
        noneInHours = new Calendar[water.count()];
    }

    /** A draw of at least {@code lackMl}, and of up to {@code roomMl} where there is a limit, takes no less time there, s. */
    public int shortestDrawS(int point, long lackMl, long roomMl) {
        return water.leastDrawS(point, water.hasLimit(point) ? lackMl : roomMl);
    }

    /** What a draw that begins at a time takes: up to {@code roomMl}, as much as the date's limit leaves, mL. */
    public long drawMl(int point, int start, long roomMl) {
        return Math.min(roomMl, leftMl(point, start / Calendars.DAY_S));
    }

    private long leftMl(int point, int day) {
        return water.dailyLimitMl(point) - draws.usedMl(point, day);
    }

    /** When a rig that is at the point from {@code t} on can begin a draw of at least {@code lackMl}, up to {@code roomMl}. */
    public int earliestDraw(int point, int t, long lackMl, long roomMl, Calendar rigHours) {
        int from = Math.max(t, draws.forgottenUntilS(point));
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
    public void forget() {
        Arrays.fill(noneUntil, 0);
    }

    /** A time before which {@link #earliestDraw} finds nothing, going by what it has found so far. */
    public int soonestDraw(int point, int t, long lackMl, long roomMl, Calendar rigHours) {
        boolean none = t >= noneFrom[point]
                && t < noneUntil[point]
                && lackMl >= noneOfLackMl[point]
                && roomMl >= noneOfRoomMl[point]
                && rigHours == noneInHours[point];
        return none ? noneUntil[point] : t;
    }

    private int search(int point, int from, long lackMl, long roomMl, Calendar rigHours) {
        Calendar hours = water.hours(point);
        int s = from;
        while (s < NEVER) {
            s = soonestDraw(point, s, lackMl, roomMl, rigHours);
            int day = s / Calendars.DAY_S;
            if (day >= days) {
                return NEVER;
            }
            long left = leftMl(point, day);
            if (left < lackMl) {
                s = (day + 1) * Calendars.DAY_S;
                continue;
            }
            int drawS = water.drawS(point, Math.min(roomMl, left));
            int found = hours.earliest(rigHours.earliest(s, drawS), drawS);
            if (found == s) {
                found = draws.hoseFree(point, s, drawS);
            }
            if (found == s) {
                return s;
            }
            s = found;
        }
        return NEVER;
    }
}
