package freshfurrow.model.timeline.planters;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.state.PlanterStates;
import freshfurrow.model.timeline.state.Shortfall;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.state.Tally;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** When and where each planter asks for its next fill, and what becomes of fields for which it can ask no more. */
public final class Requests {
    /**
     * So many planting periods in a row without a load that could be used up in time: it is the hold time that forbids the
     * field, not the season's end.
     */
    private static final int HOPELESS = 3;

    private final SeasonTables tables;
    private final FieldTable fields;
    private final PlanterTable table;
    private final State state;
    private final PlanterStates planters;
    private final FieldOrder order;
    private final Planting planting;
    private final Flushing flushing;

    public Requests(SeasonTables tables, State state, FieldOrder order, Planting planting, Flushing flushing) {
        this.tables = tables;
        this.fields = tables.fields();
        this.table = tables.planters();
        this.state = state;
        this.planters = state.planters();
        this.order = order;
        this.planting = planting;
        this.flushing = flushing;
    }

    /** Every planter's first request, once it has planted what is in its tank to begin with. */
    public void open() {
        for (int p = 0; p < table.count(); p++) {
            next(p, 0);
            flushing.open(p);
            if (tables.beginning().tankDm2(p) > 0) {
                planting.plantTank(p);
                if (table.isMounted(p)) {
                    state.rigs().moveTo(table.rig(p), planters.place(p));
                    state.rigs().freeFrom(table.rig(p), Math.max(state.rigs().freeS(table.rig(p)), planters.timeS(p)));
                }
            }
            ask(p);
        }
    }

    /** The planter whose request is the earliest; -1 when none is left. */
    public int next() {
        int best = -1;
        int earliest = NEVER;
        for (int p = 0; p < table.count(); p++) {
            int need = planters.needS(p);
            if (need < earliest) {
                earliest = need;
                best = p;
            }
        }
        return best;
    }

    /** Whether what is done for a request still to be served, by planter or rig, may begin before a time. */
    public boolean mayBeginBefore(int time) {
        int p = next();
        if (p < 0) {
            return false;
        }
        int need = planters.needS(p);
        if (need < time) {
            return true;
        }
        for (int r = 0; r < tables.rigs().count(); r++) {
            if (tables.rigs().readyFromS(r, need) < time) {
                return true;
            }
        }
        for (p = 0; p < table.count(); p++) {
            need = planters.needS(p);
            if (need < NEVER && !table.isMounted(p) && planters.place(p) != place(p) && setOff(p, need) < time) {
                return true;
            }
        }
        return false;
    }

    /**
     * When a planter that asks at its next field sets off for it: on the day of the fill or on its last working day before, so that it
     * is not left in a field for days; and where it would come too late then, as late as it can.
     */
    public int setOff(int p, int fillS) {
        Calendar hours = table.hours(p);
        int field = place(p);
        int duration = table.moveS(p, tables.places().metres(planters.place(p), field));
        int late = fields.setOff(hours, field, Math.max(planters.timeS(p), hours.lastWorkDayS(fillS)), duration);
        return late + duration <= fillS ? late : fields.latestArrival(hours, field, fillS, duration) - duration;
    }

    /** The planter's next request after a load: where it stands, or afresh when it has not been filled on that date yet. */
    public void ask(int p) {
        planters.lookedAt(p, planters.index(p));
        if (planters.index(p) >= order.size(p)) {
            planters.askNoMore(p);
            return;
        }
        flushing.before(p, order.recipe(p, planters.index(p)));
        int need = table.hours(p).next(planters.timeS(p));
        boolean getsExtract = order.recipe(p, planters.index(p)) != FieldOrder.WITHOUT_EXTRACT;
        if (getsExtract && planters.fillDay(p) == need / Calendars.DAY_S && !table.isMounted(p)) {
            planters.askOn(p, need);
        } else {
            askAfresh(p, -1, -1);
        }
    }

    /** Whether a planter's next field is given up if its request is put off once more. */
    public boolean isHopelessOncePostponed(int p) {
        return planters.postponed(p) + (planters.asksAfresh(p) ? 1 : 0) >= HOPELESS;
    }

    /** The planter asks no more where its last load ended, but at its next field, at the moment planting could start there. */
    public void askAtNextField(int p) {
        askAfresh(p, -1, -1);
    }

    /** The request can't be met in this planting period: it is made again in the next one. */
    public void postpone(int p) {
        planters.postpone(p);
        askAfresh(p, planters.needS(p), -1);
    }

    /**
     * The planter asks at its next field, at the moment planting could start there; it drives there once it gets a load.
     *
     * @param after only planting periods that begin after this, -1 for any
     * @param from not before this, -1 for any time
     */
    private void askAfresh(int p, int after, int from) {
        for (int i = planters.index(p); i < order.size(p); i = planters.index(p)) {
            int field = order.field(p, i);
            flushing.before(p, order.recipe(p, i));
            int place = planters.place(p);
            int t = planters.timeS(p);
            Calendar plantable = table.plantable(p, field);
            int open = fields.openS(field);
            int metres = tables.places().metres(place, field);
            boolean isThere = place == field || table.isMounted(p);
            int duration = isThere ? 0 : table.moveS(p, metres);
            int there = isThere ? t : fields.setOff(table.hours(p), field, t, duration) + duration;
            int soonest = Math.max(Math.max(there, open), from);
            if (after >= 0 && open <= after) {
                soonest = Math.max(soonest, plantable.nextStart(after));
            }
            int need = plantable.next(soonest);
            if (need < NEVER) {
                planters.askAfresh(p, need);
                return;
            }
            boolean tooShort = planters.postponed(p) >= HOPELESS;
            unserved(field, planters.leftDm2(p), tooShort ? Shortfall.HOLD_TIME : Shortfall.SEASON_ENDS, t);
            planters.postponeNoMore(p);
            next(p, i + 1);
        }
        planters.askNoMore(p);
    }

    /** Where the planter is when it is served: in its next field, or where it used up its last load on the same day. */
    public int place(int p) {
        return planters.asksAfresh(p) ? field(p) : planters.place(p);
    }

    private void next(int p, int index) {
        planters.lookedAt(p, index);
        planters.next(p, index, index < order.size(p) ? fields.areaDm2(order.field(p, index)) : 0);
    }

    private int field(int p) {
        return order.field(p, planters.index(p));
    }

    /** No compost is there before {@code lotFrom}: the request is made again from then on. */
    public void awaitCompost(int p, int lotFrom) {
        int need = planters.needS(p);
        askAfresh(p, -1, lotFrom);
        if (!planters.awaitsCompost(p)) {
            planters.awaitCompost(p, need);
        }
    }

    /** Nothing in the planter's list can be served any more. */
    public void giveUp(int p, Shortfall why, int since) {
        planters.lookedAt(p, order.size(p));
        for (int i = planters.index(p); i < order.size(p); i++) {
            int field = order.field(p, i);
            unserved(field, i == planters.index(p) ? planters.leftDm2(p) : fields.areaDm2(field), why, since);
        }
        planters.askNoMore(p);
    }

    /** The season ends before any of the planter's next field could be planted. */
    public void giveUpField(int p) {
        unserved(field(p), planters.leftDm2(p), Shortfall.SEASON_ENDS, planters.timeS(p));
        next(p, planters.index(p) + 1);
    }

    private void unserved(int field, long dm2, Shortfall why, int since) {
        state.tally().add(Tally.UNSERVED_DM2, dm2);
        if (state.isTold()) {
            state.journal().unserved(field, dm2, why, since);
        }
    }
}
