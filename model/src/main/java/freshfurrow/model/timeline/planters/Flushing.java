package freshfurrow.model.timeline.planters;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.MachineHours;
import freshfurrow.model.timeline.state.PlanterStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.Beginning;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * When planters' lines are flushed: at the end of each day on which mix went through them, for which the day's last minutes are kept, and
 * as soon as the tank is empty where mix of another recipe comes next.
 */
public final class Flushing {
    /** Of mix that nobody flushed out on its day. */
    private static final int LONG_AGO = Integer.MIN_VALUE;

    private final SeasonTables tables;
    private final PlanterTable table;
    private final State state;
    private final PlanterStates planters;

    public Flushing(SeasonTables tables, State state) {
        this.tables = tables;
        this.table = tables.planters();
        this.state = state;
        this.planters = state.planters();
    }

    /** What is in a planter's lines to begin with. */
    void open(int planter) {
        Beginning beginning = tables.beginning();
        int recipe = beginning.linesRecipe(planter);
        if (table.flushS(planter) > 0 && recipe != Beginning.CLEAN) {
            MachineHours hours = table.machineHours(planter);
            int day = hours.day(beginning.linesAppliedS(planter));
            int planterFree = beginning.planterFreeS(planter);
            planters.applied(planter, recipe, hours.hasLeft(planterFree, table.flushS(planter), day) ? day : LONG_AGO);
        }
    }

    /** Mix of a recipe went through the lines, last in a piece that began at a time. */
    void applied(int planter, int recipe, int s) {
        if (table.flushS(planter) > 0) {
            planters.applied(planter, recipe, table.machineHours(planter).day(s));
        }
    }

    /**
     * Flushes the lines before mix of a recipe, unless that of before was the same; the time kept at the end of a day serves as well. Nothing
     * goes through them where a field is planted without extract.
     */
    void before(int planter, int recipe) {
        int flushS = table.flushS(planter);
        if (flushS == 0
                || recipe == FieldOrder.WITHOUT_EXTRACT
                || !planters.hasMixInLines(planter)
                || planters.linesRecipe(planter) == recipe) {
            return;
        }
        int start = start(planter, planters.timeS(planter));
        if (start >= NEVER) {
            return;
        }
        if (state.isTold()) {
            state.journal().flushed(planter, planters.place(planter), start, start + flushS);
        }
        state.hours().flushed(planter, start, start + flushS);
        planters.stand(planter, planters.place(planter), start + flushS);
        planters.flushed(planter);
    }

    /**
     * When a planter whose work ends at a time is free to stand: after the flush at the end of its day, if it works on another day next.
     *
     * @param nextS when it works next, s
     */
    public int free(int planter, int s, int nextS) {
        if (table.flushS(planter) == 0 || !planters.hasMixInLines(planter)) {
            return s;
        }
        MachineHours hours = table.machineHours(planter);
        int day = planters.linesDay(planter);
        if (hours.day(s - 1) != day || hours.day(nextS) == day) {
            return s;
        }
        return start(planter, s) + table.flushS(planter);
    }

    private int start(int planter, int s) {
        return table.machineHours(planter).endOfDayStart(s, table.flushS(planter), planters.linesDay(planter));
    }
}
