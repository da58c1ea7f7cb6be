package freshfurrow.model.timeline.state;

import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.Scale;
import freshfurrow.model.timeline.tables.SeasonTables;

/** What planters do by the day: how much of a field they plant on one, and on which they are called out. A block of the {@link State} for each. */
public final class PlanterDays {
    private static final int FIELD = 0;
    private static final int DAY = 1;
    private static final int DM2 = 2;
    private static final int OUT = 3;
    static final int SIZE = OUT + DaysOut.SIZE;

    private final FieldTable fields;
    private final long leastPieceDm2;
    private final Tally tally;
    private final IdleDays idle;
    private final long[] v;
    private final int first;

    PlanterDays(SeasonTables tables, Tally tally, IdleDays idle, long[] v, int first) {
        this.fields = tables.fields();
        this.leastPieceDm2 = Scale.dm2(tables.season().goals().leastPieceHa());
        this.tally = tally;
        this.idle = idle;
        this.v = v;
        this.first = first;
    }

    private int at(int planter) {
        return first + planter * SIZE;
    }

    public void left(int planter, int s) {
        tally.add(Tally.CALL_OUTS, DaysOut.left(v, at(planter) + OUT, s));
    }

    public void filled(int planter, int s) {
        DaysOut.worked(v, at(planter) + OUT, s);
    }

    public void planted(int planter, int field, int s, long dm2) {
        int at = at(planter);
        int day = s / Calendars.DAY_S;
        if (v[at + FIELD] != field + 1) {
            idle.begins(planter, field);
        }
        if (v[at + FIELD] != field + 1 || v[at + DAY] != day) {
            tally.add(Tally.SCRAPS, scrap(at));
            v[at + FIELD] = field + 1L;
            v[at + DAY] = day;
            v[at + DM2] = 0;
        }
        v[at + DM2] += dm2;
        DaysOut.worked(v, at + OUT, s);
    }

    /** Nothing comes after. */
    public void end(int planter) {
        int at = at(planter);
        tally.add(Tally.SCRAPS, scrap(at));
        tally.add(Tally.CALL_OUTS, DaysOut.forNothing(v, at + OUT));
    }

    private int scrap(int at) {
        long field = v[at + FIELD] - 1;
        return field >= 0 && v[at + DM2] < leastPieceDm2 && fields.areaDm2((int) field) > leastPieceDm2 ? 1 : 0;
    }
}
