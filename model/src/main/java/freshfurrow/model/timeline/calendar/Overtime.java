package freshfurrow.model.timeline.calendar;

import freshfurrow.model.season.Applicator;

/**
 * How long past the last hours of a day planting may go on that finishes a field or uses up a load: not past midnight, not into the next
 * hours, and not where rain closes the ground or the machine is down. Where time is kept for a flush at the end of the day, planting goes
 * on past the hours that are left, and the flush comes after it, in the same bounds. Times are s since the season's first midnight.
 */
public final class Overtime {
    private static final int DAY_S = Calendars.DAY_S;

    /** By planting period. */
    private final int[] afterS;

    private final int goOnUntil;

    private Overtime(int[] afterS, int goOnUntil) {
        this.afterS = afterS;
        this.goOnUntil = goOnUntil;
    }

    static Overtime none(Calendar planting) {
        return new Overtime(new int[planting.periods()], 0);
    }

    /**
     * @param possible when the machine is not down and the ground not wet, whatever its hours
     * @param nowS when a season under way goes on, on a day that is worked; 0 else
     */
    static Overtime of(Applicator machine, Calendar planting, Calendar possible, int nowS) {
        int dayEnd = Math.floorMod(machine.hours().dayEndS() - machine.flushS() - 1, DAY_S) + 1;
        int[] after = new int[planting.periods()];
        for (int i = 0; i < after.length; i++) {
            int end = planting.endOf(i);
            if (end % DAY_S == dayEnd % DAY_S && !isGoneOnWith(planting, i)) {
                after[i] = Math.max(
                        0,
                        Math.min(limit(machine, end, end - 1, possible), planting.startOf(i + 1) - machine.flushS())
                                - end);
            }
        }
        int endToday = nowS / DAY_S * DAY_S + dayEnd;
        boolean isOver = machine.flushS() == 0 && nowS > 0 && nowS >= endToday && nowS < endToday + machine.overtimeS();
        return new Overtime(after, isOver ? limit(machine, endToday, nowS, possible) : 0);
    }

    private static boolean isGoneOnWith(Calendar planting, int period) {
        return planting.startOf(period + 1) == planting.endOf(period);
    }

    private static int limit(Applicator machine, int end, int from, Calendar possible) {
        int midnight = ((end - 1) / DAY_S + 1) * DAY_S;
        int possibleUntil = possible.holds(from) ? possible.endOf(possible.periodAt(from)) : from;
        return Math.max(end, Math.min(end + machine.overtimeS(), Math.min(midnight, possibleUntil) - machine.flushS()));
    }

    /** After a planting period, s; 0 where it does not end a day's hours. */
    public int afterS(int period) {
        return afterS[period];
    }

    /**
     * Until when planting may go on that was under way, past the day's last hours, when the season is taken up again; 0 else, and for a
     * machine that is flushed then.
     */
    public int goOnUntil() {
        return goOnUntil;
    }
}
