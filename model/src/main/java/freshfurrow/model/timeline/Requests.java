package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.AWAITS_COMPOST;
import static freshfurrow.model.timeline.State.FILL_DAY;
import static freshfurrow.model.timeline.State.FRESH;
import static freshfurrow.model.timeline.State.INDEX;
import static freshfurrow.model.timeline.State.LEFT_DM2;
import static freshfurrow.model.timeline.State.NEED;
import static freshfurrow.model.timeline.State.PLACE;
import static freshfurrow.model.timeline.State.POSTPONED;
import static freshfurrow.model.timeline.State.TIME;
import static freshfurrow.model.timeline.State.WAIT_FROM;

import freshfurrow.model.plan.WaitReason;

/** When and where each planter asks for its next fill, and what becomes of fields for which it can ask no more. */
final class Requests {
    /**
     * So many planting periods in a row without a load that could be used up in time: it is the hold time that forbids the
     * field, not the season's end.
     */
    private static final int HOPELESS = 3;

    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private final Planting planting;

    Requests(CompiledSeason season, State state, Planting planting) {
        this.season = season;
        this.state = state;
        this.v = state.v;
        this.planting = planting;
    }

    /** Every planter's first request, once it has planted what is in its tank to begin with. */
    void open() {
        for (int p = 0; p < season.planterCount(); p++) {
            planting.lookedAt(p, 0);
            if (planting.size(p) > 0) {
                v[state.planter(p) + LEFT_DM2] = season.fields.areaDm2(planting.field(p, 0));
            }
            if (season.beginning.tankDm2[p] > 0) {
                planting.plantTank(p);
            }
            ask(p);
        }
    }

    /** The planter whose request is the earliest; -1 when none is left. */
    int next() {
        int best = -1;
        long earliest = NEVER;
        for (int p = 0; p < season.planterCount(); p++) {
            long need = v[state.planter(p) + NEED];
            if (need < earliest) {
                earliest = need;
                best = p;
            }
        }
        return best;
    }

    /** Whether what is done for a request still to be served, by planter or rig, may begin before a time. */
    boolean mayBeginBefore(int time) {
        int p = next();
        if (p < 0) {
            return false;
        }
        int need = (int) v[state.planter(p) + NEED];
        if (need < time) {
            return true;
        }
        for (int r = 0; r < season.rigs.count(); r++) {
            if (season.rigs.readyFromS(r, need) < time) {
                return true;
            }
        }
        return false;
    }

    /** The planter's next request after a load: where it stands, or afresh when it has not been filled on that date yet. */
    void ask(int p) {
        int base = state.planter(p);
        int t = (int) v[base + TIME];
        planting.lookedAt(p, (int) v[base + INDEX]);
        if (v[base + INDEX] >= planting.size(p)) {
            v[base + NEED] = NEVER;
            return;
        }
        int need = season.planters.hours(p).next(t);
        if (v[base + FILL_DAY] == need / Calendars.DAY_S) {
            v[base + FRESH] = 0;
            v[base + NEED] = need;
        } else {
            askAfresh(p, -1, -1);
        }
    }

    /** The request can't be met in this planting period: it is made again in the next one. */
    void postpone(int p) {
        int base = state.planter(p);
        v[base + POSTPONED] += v[base + FRESH];
        askAfresh(p, (int) v[base + NEED], -1);
    }

    /**
     * Sends the planter to its next field, to ask there at the moment planting could start.
     *
     * @param after only planting periods that begin after this, -1 for any
     * @param from not before this, -1 for any time
     */
    private void askAfresh(int p, int after, int from) {
        int base = state.planter(p);
        Calendar hours = season.planters.hours(p);
        for (int i = (int) v[base + INDEX]; i < planting.size(p); i = (int) v[base + INDEX]) {
            int field = planting.field(p, i);
            int place = (int) v[base + PLACE];
            int t = (int) v[base + TIME];
            Calendar plantable = season.planters.plantable(p, field);
            int open = season.fields.openS(field);
            int duration = place == field ? 0 : planting.moveS(p, place, field);
            int start = place == field ? t : hours.earliest(t, duration);
            int there = start + duration;
            int soonest = Math.max(Math.max(there, open), from);
            if (after >= 0 && open <= after) {
                soonest = Math.max(soonest, plantable.nextStart(after));
            }
            int need = plantable.next(soonest);
            if (need < NEVER) {
                if (place != field) {
                    planting.moved(p, place, field, start, duration);
                    v[base + PLACE] = field;
                    v[base + TIME] = there;
                }
                v[base + FRESH] = 1;
                v[base + NEED] = need;
                return;
            }
            boolean tooShort = v[base + POSTPONED] >= HOPELESS;
            unserved(field, v[base + LEFT_DM2], tooShort ? Shortfall.HOLD_TIME : Shortfall.SEASON_ENDS, t);
            v[base + POSTPONED] = 0;
            v[base + INDEX]++;
            planting.lookedAt(p, i + 1);
            v[base + LEFT_DM2] = i + 1 < planting.size(p) ? season.fields.areaDm2(planting.field(p, i + 1)) : 0;
        }
        v[base + NEED] = NEVER;
    }

    /** The first moment from when the planter stands still at which planting of its next field could start, if it had a load. */
    int couldPlantFrom(int p) {
        int field = planting.field(p, (int) v[state.planter(p) + INDEX]);
        return season.planters.plantable(p, field).next(Math.max(standsFrom(p), season.fields.openS(field)));
    }

    /** Records how long the planter stood, up to {@code until}, before its next field could be planted. */
    void standBy(int p, int until) {
        if (state.journal == null) {
            return;
        }
        int base = state.planter(p);
        int from = standsFrom(p);
        if (from < until) {
            boolean closed = from < season.fields.openS(planting.field(p, (int) v[base + INDEX]));
            state.journal.waited(p, (int) v[base + PLACE], from, until, closed ? WaitReason.WINDOW : WaitReason.WET);
        }
    }

    private int standsFrom(int p) {
        return season.planters.hours(p).next((int) v[state.planter(p) + TIME]);
    }

    /** No compost is there before {@code lotFrom}: the request is made again from then on. */
    void awaitCompost(int p, int lotFrom) {
        int base = state.planter(p);
        long need = v[base + NEED];
        askAfresh(p, -1, lotFrom);
        if (v[base + AWAITS_COMPOST] == 0) {
            v[base + AWAITS_COMPOST] = 1;
            v[base + WAIT_FROM] = need;
        }
    }

    /** Nothing in the planter's list can be served any more. */
    void giveUp(int p, Shortfall why, int since) {
        int base = state.planter(p);
        planting.lookedAt(p, planting.size(p));
        for (int i = (int) v[base + INDEX]; i < planting.size(p); i++) {
            long left = i == v[base + INDEX] ? v[base + LEFT_DM2] : season.fields.areaDm2(planting.field(p, i));
            unserved(planting.field(p, i), left, why, since);
        }
        v[base + NEED] = NEVER;
    }

    void unserved(int field, long dm2, Shortfall why, int since) {
        state.add(State.UNSERVED_DM2, dm2);
        if (state.journal != null) {
            state.journal.unserved(field, dm2, why, since);
        }
    }
}
