package freshfurrow.model.timeline.state;

import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.Scale;
import freshfurrow.model.timeline.tables.SeasonTables;

/** What a planter does by the day: how much of a field it plants on one, and on which it is called out. */
public final class PlanterDays {
    static final int SIZE = 3 + DaysOut.SIZE;

    private static final int FIELD = 0;
    private static final int DAY = 1;
    private static final int DM2 = 2;
    private static final int OUT = 3;

    private final FieldTable fields;
    private final long leastPieceDm2;
    private final long[] v = new long[SIZE];

    private int scraps;
    private int callOuts;

    public PlanterDays(SeasonTables tables) {
        this.fields = tables.fields();
        this.leastPieceDm2 = Scale.dm2(tables.season().goals().leastPieceHa());
    }

    /** Goes on from where a planter stands. */
    public PlanterDays from(PlanterStates states, int planter) {
        states.keepDays(planter, v);
        scraps = 0;
        callOuts = 0;
        return this;
    }

    /** Makes it true. */
    public void make(PlanterStates states, int planter, Tally tally) {
        states.putBackDays(planter, v);
        tally.add(Tally.SCRAPS, scraps);
        tally.add(Tally.CALL_OUTS, callOuts);
    }

    public PlanterDays left(int s) {
        callOuts += DaysOut.left(v, OUT, s);
        return this;
    }

    public PlanterDays filled(int s) {
        DaysOut.worked(v, OUT, s);
        return this;
    }

    public void planted(int field, int s, long dm2) {
        int day = s / Calendars.DAY_S;
        if (v[FIELD] != field + 1 || v[DAY] != day) {
            scraps += scrap();
            v[FIELD] = field + 1L;
            v[DAY] = day;
            v[DM2] = 0;
        }
        v[DM2] += dm2;
        DaysOut.worked(v, OUT, s);
    }

    /** Nothing comes after. */
    public PlanterDays end() {
        scraps += scrap();
        callOuts += DaysOut.forNothing(v, OUT);
        return this;
    }

    private int scrap() {
        return v[FIELD] > 0 && v[DM2] < leastPieceDm2 && fields.areaDm2((int) v[FIELD] - 1) > leastPieceDm2 ? 1 : 0;
    }
}
