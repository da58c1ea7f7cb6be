package freshfurrow.model.timeline.state;

import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.calendar.MachineHours;
import freshfurrow.model.timeline.tables.Beginning;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * Hours at work: each day from a machine's first deed to its last, breaks left out. Told of the deeds of each machine in the order of
 * their times, it adds up what each day comes to once the next begins. It counts only where plans are judged by money, as nothing else
 * asks for it. A block of the {@link State} for each machine: planters, then rigs.
 */
public final class HoursAtWork {
    /** The day of the deeds that are not added up yet, from 1; 0 for none. */
    private static final int DAY = 0;

    private static final int FIRST_S = 1;
    private static final int LAST_S = 2;
    /** The day of its hours on which it was set up, or mix went through its lines, and that is not ended yet; from 1, or -1 for none. */
    private static final int OPEN = 3;
    /** When its last work ended. */
    private static final int WORK_END = 4;

    private static final int HAS_WORKED = 5;
    private static final int SIZE = 6;

    private static final int NONE = Integer.MIN_VALUE;

    private final SeasonTables tables;
    private final Tally tally;
    private final long[] v;
    private final int first;
    private final int planters;
    private final boolean counts;

    HoursAtWork(SeasonTables tables, Tally tally, long[] v, int first) {
        this.tables = tables;
        this.tally = tally;
        this.v = v;
        this.first = first;
        planters = tables.planters().count();
        counts = counts(tables);
    }

    static int size(SeasonTables tables) {
        return counts(tables) ? (tables.planters().count() + tables.rigs().count()) * SIZE : 0;
    }

    private static boolean counts(SeasonTables tables) {
        return tables.season().goals().byMoney().isPresent();
    }

    void reset() {
        if (!counts) {
            return;
        }
        Beginning beginning = tables.beginning();
        for (int p = 0; p < planters; p++) {
            boolean isFlushed = tables.planters().flushS(p) == 0 || beginning.linesRecipe(p) == Beginning.CLEAN;
            open(p, isFlushed ? NONE : hours(p).day(beginning.linesAppliedS(p)), beginning.planterFreeS(p));
        }
        for (int r = 0; r < tables.rigs().count(); r++) {
            int m = planters + r;
            int day = NONE;
            if (beginning.rigSetUpS(r).isPresent()) {
                day = hours(m).day(beginning.rigSetUpS(r).getAsInt());
            }
            open(m, day, beginning.rigFreeS(r));
        }
    }

    private void open(int m, int day, int workEnd) {
        v[at(m) + OPEN] = day;
        v[at(m) + WORK_END] = workEnd;
    }

    /** A planter drives, or plants without extract. */
    public void planterWorked(int planter, int start, int end) {
        planter(planter, start, end, false);
    }

    /** A planter applies mix. */
    public void applied(int planter, int start, int end) {
        planter(planter, start, end, true);
    }

    /** A rig fills a planter. */
    public void filled(int planter, int rig, int start, int end) {
        rigWorked(rig, start, end);
        if (counts && !tables.planters().isMounted(planter)) {
            planter(planter, start, end, false);
        }
    }

    /** What a planter does that is mounted on a rig, the rig does. */
    private void planter(int planter, int start, int end, boolean applies) {
        if (!counts) {
            return;
        }
        if (tables.planters().isMounted(planter)) {
            rigWorked(tables.planters().rig(planter), start, end);
            return;
        }
        int at = at(planter);
        int day = hours(planter).day(start);
        if (v[at + OPEN] != day) {
            flushAtEndOfDay(planter);
        }
        if (applies && tables.planters().flushS(planter) > 0) {
            v[at + OPEN] = day;
        }
        attended(planter, start, end);
        v[at + WORK_END] = end;
        v[at + HAS_WORKED] = 1;
    }

    /** A planter's lines are flushed before another recipe. */
    public void flushed(int planter, int start, int end) {
        planterWorked(planter, start, end);
        if (counts) {
            v[at(planter) + OPEN] = NONE;
        }
    }

    /** A planter waits for a rig, water or compost. */
    public void waited(int planter, int start, int end) {
        if (counts) {
            if (v[at(planter) + OPEN] != hours(planter).day(start)) {
                flushAtEndOfDay(planter);
            }
            attended(planter, start, end);
        }
    }

    /** As the plan's record has it: {@code journal/DaysOfPlanter}. */
    private void flushAtEndOfDay(int planter) {
        int at = at(planter);
        if (v[at + OPEN] == NONE) {
            return;
        }
        int day = (int) v[at + OPEN];
        int workEnd = (int) v[at + WORK_END];
        int flushS = tables.planters().flushS(planter);
        if (v[at + HAS_WORKED] == 1 || hours(planter).hasLeft(workEnd, flushS, day)) {
            int start = hours(planter).endOfDayStart(workEnd, flushS, day);
            attended(planter, start, start + flushS);
        }
        v[at + OPEN] = NONE;
    }

    /** A rig, or a planter that is mounted on it, does something; it is set up before the first work of a day. */
    public void rigWorked(int rig, int start, int end) {
        if (!counts || start >= end) {
            return;
        }
        int m = planters + rig;
        int at = at(m);
        int day = hours(m).day(start);
        if (v[at + OPEN] != day) {
            closeUp(rig);
            int setUpS = tables.season().rigs().get(rig).kept().firstS();
            if (setUpS > 0) {
                int setUpEnd = hours(m).there().latest(start, setUpS);
                attended(m, setUpEnd - setUpS, setUpEnd);
            }
            v[at + OPEN] = day;
        }
        attended(m, start, end);
        v[at + WORK_END] = end;
    }

    /** As the plan's record has it: {@code journal/DaysOfRig}. */
    private void closeUp(int rig) {
        int m = planters + rig;
        int at = at(m);
        int closeUpS = tables.season().rigs().get(rig).kept().lastS();
        int workEnd = (int) v[at + WORK_END];
        if (v[at + OPEN] != NONE && closeUpS > 0 && hours(m).hasLeft(workEnd, closeUpS, (int) v[at + OPEN])) {
            int start = hours(m).there().earliest(workEnd, closeUpS);
            attended(m, start, start + closeUpS);
        }
    }

    /** Whether anything is counted: what happens in detail need not be told otherwise. */
    public boolean counts() {
        return counts;
    }

    /** Nothing comes after. */
    public void end() {
        if (!counts) {
            return;
        }
        for (int p = 0; p < planters; p++) {
            flushAtEndOfDay(p);
            addUp(p);
        }
        for (int r = 0; r < tables.rigs().count(); r++) {
            closeUp(r);
            addUp(planters + r);
        }
    }

    private void attended(int m, int start, int end) {
        int at = at(m);
        int day = Math.min(start / Calendars.DAY_S, tables.season().days() - 1) + 1;
        if (v[at + DAY] != day) {
            addUp(m);
            v[at + DAY] = day;
            v[at + FIRST_S] = start;
            v[at + LAST_S] = end;
        } else {
            v[at + FIRST_S] = Math.min(v[at + FIRST_S], start);
            v[at + LAST_S] = Math.max(v[at + LAST_S], end);
        }
    }

    private void addUp(int m) {
        int at = at(m);
        if (v[at + DAY] > 0) {
            tally.add(Tally.WORK_S, hours(m).there().work((int) v[at + FIRST_S], (int) v[at + LAST_S]));
            v[at + DAY] = 0;
        }
    }

    private MachineHours hours(int m) {
        return m < planters ? tables.planters().machineHours(m) : tables.rigs().machineHours(m - planters);
    }

    private int at(int m) {
        return first + m * SIZE;
    }
}
