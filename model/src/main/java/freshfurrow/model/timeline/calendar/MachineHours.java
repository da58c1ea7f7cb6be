package freshfurrow.model.timeline.calendar;

import static freshfurrow.model.timeline.calendar.Calendars.DAY_S;

/**
 * When a machine is there, and when it works: its hours, and those without what its days begin and end with. A day of its hours may
 * run past midnight and have breaks.
 */
public final class MachineHours {
    private final Calendar there;
    private final Calendar work;
    private final int dayStartS;

    MachineHours(Calendar there, Calendar work, int dayStartS) {
        this.there = there;
        this.work = work;
        this.dayStartS = dayStartS;
    }

    /** All of its hours. */
    public Calendar there() {
        return there;
    }

    /** The same without what its days begin and end with. */
    public Calendar work() {
        return work;
    }

    /** The day of its hours that holds a moment or was the last to begin by then; -1 for what goes on from the day before the season. */
    public int day(int s) {
        return Math.floorDiv(s - dayStartS, DAY_S);
    }

    /** Whether a day has so much time in one piece left from a moment on. */
    public boolean hasLeft(int s, int duration, int day) {
        int start = there.earliest(s, duration);
        return start < Calendar.NEVER && day(start) == day;
    }

    /** When what ends a day may begin from a moment on: in its hours, or at once after work that went on past them. */
    public int endOfDayStart(int s, int duration, int day) {
        return hasLeft(s, duration, day) || day(s - 1) != day ? there.earliest(s, duration) : s;
    }
}
