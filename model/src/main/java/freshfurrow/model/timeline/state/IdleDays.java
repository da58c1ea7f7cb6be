package freshfurrow.model.timeline.state;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * On which days planters stand for fields that are closed, and how long of it a field that they plant later could have been planted. It is
 * counted once that field is begun, so that what has been counted by a moment depends on nothing that comes after. A block of the
 * {@link State} for each planter.
 */
public final class IdleDays {
    /** When the last wait that is kept ends, s. */
    private static final int LAST_S = 0;

    private static final int FIRST_DAY = 1;

    // of each day: how much was counted, from when the wait lasts, and until when, s of that day
    private static final int BITS = 17;
    private static final int MASK = (1 << BITS) - 1;
    private static final int FROM = BITS;
    private static final int COUNTED = 2 * BITS;

    private final PlanterTable planters;
    private final FieldTable fields;
    private final Tally tally;
    private final long[] v;
    private final int first;
    private final int days;

    IdleDays(SeasonTables tables, Tally tally, long[] v, int first) {
        planters = tables.planters();
        fields = tables.fields();
        days = tables.season().days();
        this.tally = tally;
        this.v = v;
        this.first = first;
    }

    static int size(SeasonTables tables) {
        return tables.planters().count() * ofPlanter(tables.season().days());
    }

    private static int ofPlanter(int days) {
        return FIRST_DAY + days;
    }

    private int at(int planter) {
        return first + planter * ofPlanter(days);
    }

    /** A planter stands for a field that is closed; of each day the first such wait is kept of which some lies in its hours. */
    public void stood(int planter, int from, int until) {
        int at = at(planter);
        int end = Math.min(until, days * Calendars.DAY_S);
        for (int day = from / Calendars.DAY_S; day * Calendars.DAY_S < end; day++) {
            int midnight = day * Calendars.DAY_S;
            int start = Math.max(from, midnight);
            int stop = Math.min(end, midnight + Calendars.DAY_S);
            if (v[at + FIRST_DAY + day] == 0 && planters.hours(planter).work(start, stop) > 0) {
                v[at + FIRST_DAY + day] = ((long) (start - midnight) << FROM) + (stop - midnight);
                v[at + LAST_S] = end;
            }
        }
    }

    /** A planter begins to plant a field. */
    void begins(int planter, int field) {
        int at = at(planter);
        int opens = fields.openS(field);
        if (opens >= v[at + LAST_S]) {
            return;
        }
        Calendar plantable = planters.plantable(planter, field);
        for (int day = opens / Calendars.DAY_S; day * (long) Calendars.DAY_S < v[at + LAST_S]; day++) {
            long kept = v[at + FIRST_DAY + day];
            if (kept != 0) {
                int midnight = day * Calendars.DAY_S;
                int from = midnight + (int) ((kept >> FROM) & MASK);
                int until = midnight + (int) (kept & MASK);
                int could = plantable.work(Math.max(from, opens), until);
                int counted = (int) (kept >> COUNTED);
                if (could > counted) {
                    tally.add(Tally.IDLE_S, could - counted);
                    v[at + FIRST_DAY + day] = kept + ((long) (could - counted) << COUNTED);
                }
            }
        }
    }
}
