package freshfurrow.model.timeline.planters;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.actual.ActualTimes;
import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.calendar.Overtime;
import freshfurrow.model.timeline.state.Journal;
import freshfurrow.model.timeline.state.PlanterStates;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.Promised;
import freshfurrow.model.timeline.tables.SeasonTables;
import org.jspecify.annotations.Nullable;

/**
 * A planter's way through its list out of one load: pieces of fields, moves, nights and rain, until the load is used up or too old. It
 * changes nothing but itself: a load is sized by it, and {@link Planting} makes it true.
 */
public final class Walk {
    private final FieldTable fields;
    private final PlaceTable places;
    private final PlanterTable planters;
    private final Promised promised;
    private final PlanterStates states;
    private final FieldOrder order;
    private final WalkTally tally;
    private final WalkSteps steps = new WalkSteps();

    // where the walk stands
    private int time;
    private int place;
    private int index;
    private long leftDm2;

    // what it has been through
    private int parts;
    private int from;
    private int until;
    private long capDm2;

    /** Whether what is planted gets no mix. */
    private boolean without;

    /** Told of a walk that is made true. */
    @Nullable
    private Journal journal;

    // where times turn out otherwise than planned
    @Nullable
    private ActualTimes actual;

    private double pace;
    private boolean breaksDown;

    public Walk(SeasonTables tables, PlanterStates states, FieldOrder order) {
        this.fields = tables.fields();
        this.places = tables.places();
        this.planters = tables.planters();
        this.promised = tables.promised();
        this.states = states;
        this.order = order;
        this.tally = new WalkTally(tables.fields());
    }

    /** Puts the walk at a place, with a load in the planter's tank from {@code t} on. */
    public void begin(int planter, int at, int t) {
        time = t;
        place = at;
        index = states.index(planter);
        leftDm2 = states.leftDm2(planter);
        parts = 0;
        from = t;
        tally.reset();
        steps.none();
        actual = null;
        pace = 1;
    }

    /**
     * Has the walk that was just begun turn out otherwise than planned.
     *
     * @param mayBreakDown whether the planter breaks down on it, or goes on at its pace
     */
    void turnsOut(int planter, ActualTimes times, boolean mayBreakDown) {
        actual = times;
        pace = times.pace(planter, from);
        breaksDown = mayBreakDown;
        time = upFrom(planter, time);
    }

    private int upFrom(int planter, int t) {
        return actual == null || !breaksDown ? t : actual.planterUpFrom(planter, t);
    }

    /** Another request is served: the last walk is of no use for it. */
    public void forget() {
        parts = 0;
    }

    /** Whether the last walk was of just this load. */
    boolean isOf(int t, long loadDm2, int deadline) {
        return parts == 1 && from == t && until == deadline && capDm2 == loadDm2;
    }

    void tell(Journal told) {
        journal = told;
    }

    void tellNobody() {
        journal = null;
    }

    public int timeS() {
        return time;
    }

    public int place() {
        return place;
    }

    int index() {
        return index;
    }

    /** Area of the field at {@link #index} that is left. */
    long leftDm2() {
        return leftDm2;
    }

    /** What it has brought. */
    WalkTally tally() {
        return tally;
    }

    /** When it set off, and what it planted, in order. */
    WalkSteps steps() {
        return steps;
    }

    /** Goes on later, after another fill. */
    public void goOnAt(int t) {
        time = t;
    }

    /** Plants up to {@code mostDm2} of fields of the recipe before the deadline and returns the area planted. */
    public long plant(int planter, int recipe, long mostDm2, int deadline) {
        parts++;
        until = deadline;
        capDm2 = mostDm2;
        int size = order.size(planter);
        long planted = 0;
        while (planted < mostDm2 && index < size) {
            int field = order.field(planter, index);
            if (order.recipe(planter, index) != recipe || !reach(planter, field, deadline)) {
                break;
            }
            planted += plantField(planter, field, mostDm2 - planted, deadline);
            if (leftDm2 > 0) {
                break;
            }
            goToNext(planter);
        }
        states.lookedAt(planter, index);
        return planted;
    }

    /** Plants what is left of the next field before the deadline, without extract, and returns the area planted. */
    long plantWithout(int planter, int deadline) {
        parts++;
        int field = order.field(planter, index);
        if (!reach(planter, field, deadline)) {
            return 0;
        }
        without = true;
        long planted = plantField(planter, field, leftDm2, deadline);
        without = false;
        tally.untreated(field, planted);
        if (leftDm2 == 0) {
            goToNext(planter);
        }
        states.lookedAt(planter, index);
        return planted;
    }

    private void goToNext(int planter) {
        index++;
        leftDm2 = index < order.size(planter) ? fields.areaDm2(order.field(planter, index)) : 0;
    }

    /** Drives to a field where it can be planted before the deadline, and says whether it stands there. */
    private boolean reach(int planter, int field, int deadline) {
        if (place == field) {
            return true;
        }
        int metres = places.metres(place, field);
        int duration = planters.moveS(planter, metres);
        int start = fields.setOff(planters.hours(planter), field, time, duration);
        int begin = start == NEVER
                ? NEVER
                : planters.plantable(planter, field).next(Math.max(start + duration, fields.openS(field)));
        if (begin >= deadline) {
            return false;
        }
        tally.drove(planters.driveS(planter, metres), metres);
        int end = actual == null ? start + duration : actual.planterDriveEnd(planter, start, duration);
        steps.setOff(start, end);
        if (journal != null) {
            journal.planterMoved(planter, place, field, start, end);
        }
        time = end;
        place = field;
        return true;
    }

    private long plantField(int planter, int field, long mostDm2, int deadline) {
        Calendar plantable = planters.plantable(planter, field);
        double capacity = planters.capacityDm2PerS(planter) * pace;
        long areaDm2 = fields.areaDm2(field);
        long left = leftDm2;
        long planted = 0;
        int t = Math.max(time, fields.openS(field));
        Overtime overtime = planters.overtime(planter, field);
        if (t < overtime.goOnUntil()) {
            long wanted = Math.min(left, mostDm2);
            int over = t + (int) Math.ceil(wanted / capacity);
            if (over <= Math.min(deadline, overtime.goOnUntil())) {
                plantPiece(planter, field, t, over, wanted, left == areaDm2);
                tally.overtime(over - t);
                planted = wanted;
                left -= wanted;
                t = over;
            }
        }
        int period = plantable.periodAt(t);
        while (left > 0 && planted < mostDm2) {
            int start = upFrom(planter, Math.max(t, plantable.startOf(period)));
            if (start >= deadline) {
                break;
            }
            int periodEnd = plantable.endOf(period);
            if (start >= periodEnd) {
                t = start;
                period++;
                continue;
            }
            int end = Math.min(Math.min(periodEnd, deadline), (start / Calendars.DAY_S + 1) * Calendars.DAY_S);
            if (actual != null && breaksDown) {
                end = Math.min(end, actual.planterDownNext(planter, start));
            }
            long wanted = Math.min(left, mostDm2 - planted);
            long piece = Math.min(wanted, (long) ((end - start) * capacity));
            boolean isCut = piece < wanted;
            if (isCut && piece < Leeway.CRUMB_DM2) {
                piece = 0;
            }
            if (isCut && end == periodEnd) {
                int over = start + (int) Math.ceil(wanted / capacity);
                if (over <= Math.min(deadline, periodEnd + overtime.afterS(period))) {
                    piece = wanted;
                    end = over;
                    tally.overtime(over - periodEnd);
                }
            } else if (piece == wanted) {
                end = Math.min(end, start + (int) Math.ceil(piece / capacity));
            }
            if (piece > 0) {
                plantPiece(planter, field, start, end, piece, left == areaDm2);
                planted += piece;
                left -= piece;
            }
            t = end;
            if (t >= periodEnd) {
                period++;
            }
        }
        leftDm2 = left;
        return planted;
    }

    private void plantPiece(int planter, int field, int start, int end, long dm2, boolean begins) {
        if (begins && promised.isBrokenBy(planter, field, start)) {
            tally.moved();
        }
        if (begins && fields.isFixedTo(field, start)) {
            tally.kept();
        }
        time = end;
        tally.planted(field, start, end, dm2);
        steps.planted(field, start, end, dm2);
        if (journal != null && without) {
            journal.plantedWithout(planter, field, start, end, dm2);
        } else if (journal != null) {
            journal.planted(planter, field, start, end, dm2);
        }
    }
}
