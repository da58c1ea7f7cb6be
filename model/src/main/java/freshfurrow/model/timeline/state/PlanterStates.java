package freshfurrow.model.timeline.state;

import freshfurrow.model.timeline.calendar.Calendar;

/** How planters stand: a block of the {@link State} for each. */
public final class PlanterStates {
    private static final int PLACE = 0;
    private static final int TIME = 1;
    private static final int INDEX = 2;
    private static final int LEFT_DM2 = 3;
    private static final int FILL_DAY = 4;
    private static final int NEED = 5;
    private static final int FRESH = 6;
    private static final int WAIT_FROM = 7;
    private static final int AWAITS_COMPOST = 8;
    private static final int POSTPONED = 9;
    private static final int LOOKED_TO = 10;
    /** One more than the recipe, so that 0 is none. */
    private static final int LINES_RECIPE = 11;

    private static final int LINES_DAY = 12;
    static final int SIZE = 13;

    private final long[] v;
    private final int first;

    PlanterStates(long[] v, int first) {
        this.v = v;
        this.first = first;
    }

    private int at(int planter) {
        return first + planter * SIZE;
    }

    public int place(int planter) {
        return (int) v[at(planter) + PLACE];
    }

    /** When it is free for what comes next, s. */
    public int timeS(int planter) {
        return (int) v[at(planter) + TIME];
    }

    public void stand(int planter, int place, int s) {
        int at = at(planter);
        v[at + PLACE] = place;
        v[at + TIME] = s;
    }

    /** Where in its list the field stands that it plants next. */
    public int index(int planter) {
        return (int) v[at(planter) + INDEX];
    }

    /** Area of that field that is not planted yet. */
    public long leftDm2(int planter) {
        return v[at(planter) + LEFT_DM2];
    }

    public void next(int planter, int index, long leftDm2) {
        int at = at(planter);
        v[at + INDEX] = index;
        v[at + LEFT_DM2] = leftDm2;
    }

    /** The day of its last fill. */
    public int fillDay(int planter) {
        return (int) v[at(planter) + FILL_DAY];
    }

    public void filledOn(int planter, int day) {
        v[at(planter) + FILL_DAY] = day;
    }

    /** When it asks for its next fill, s; {@link Calendar#NEVER} when for none. */
    public int needS(int planter) {
        return (int) v[at(planter) + NEED];
    }

    /** It asks in its field, out of which it was filled on the same day before. */
    public void askOn(int planter, int needS) {
        int at = at(planter);
        v[at + FRESH] = 0;
        v[at + NEED] = needS;
    }

    /** It asks at the moment at which planting could start. */
    public void askAfresh(int planter, int needS) {
        int at = at(planter);
        v[at + FRESH] = 1;
        v[at + NEED] = needS;
    }

    public void askNoMore(int planter) {
        v[at(planter) + NEED] = Calendar.NEVER;
    }

    public boolean asksAfresh(int planter) {
        return v[at(planter) + FRESH] == 1;
    }

    /** Planting periods in a row in which no load could be used up in time. */
    public int postponed(int planter) {
        return (int) v[at(planter) + POSTPONED];
    }

    /** Counts requests that were made afresh only: several in one period count once. */
    public void postpone(int planter) {
        int at = at(planter);
        v[at + POSTPONED] += v[at + FRESH];
    }

    public void postponeNoMore(int planter) {
        v[at(planter) + POSTPONED] = 0;
    }

    public boolean awaitsCompost(int planter) {
        return v[at(planter) + AWAITS_COMPOST] == 1;
    }

    /** Since when it waits for compost, s. */
    public int waitFromS(int planter) {
        return (int) v[at(planter) + WAIT_FROM];
    }

    public void awaitCompost(int planter, int fromS) {
        int at = at(planter);
        v[at + AWAITS_COMPOST] = 1;
        v[at + WAIT_FROM] = fromS;
    }

    public void awaitCompostNoMore(int planter) {
        v[at(planter) + AWAITS_COMPOST] = 0;
    }

    /** Whether mix has gone through its lines since they were flushed; told of planters that are flushed only. */
    public boolean hasMixInLines(int planter) {
        return v[at(planter) + LINES_RECIPE] > 0;
    }

    /** Of that mix; meaningless where there is none, as the day. */
    public int linesRecipe(int planter) {
        return (int) v[at(planter) + LINES_RECIPE] - 1;
    }

    /** The day of the planter's hours on which mix went through its lines last. */
    public int linesDay(int planter) {
        return (int) v[at(planter) + LINES_DAY];
    }

    public void applied(int planter, int recipe, int day) {
        int at = at(planter);
        v[at + LINES_RECIPE] = recipe + 1L;
        v[at + LINES_DAY] = day;
    }

    public void flushed(int planter) {
        v[at(planter) + LINES_RECIPE] = 0;
    }

    /** What comes after depends on the planter's list as far as this index. */
    public void lookedAt(int planter, int index) {
        int slot = at(planter) + LOOKED_TO;
        v[slot] = Math.max(v[slot], index + 1);
    }

    /** Up to the state kept in an array, all depends on the planter's list before this index only; past its end, on all of it. */
    public long lookedTo(long[] kept, int planter) {
        return kept[at(planter) + LOOKED_TO];
    }
}
