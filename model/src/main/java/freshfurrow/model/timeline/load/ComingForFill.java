package freshfurrow.model.timeline.load;

import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.timeline.actual.ActualTimes;
import freshfurrow.model.timeline.planters.FieldOrder;
import freshfurrow.model.timeline.planters.Flushing;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.planters.Requests;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.state.Tally;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * What a planter does before a fill that it is served, or before it plants without one: it stands where its work ended, drives to its next field
 * if it asks there, and waits. One that is mounted on a rig does nothing then: what the rig does is told of the rig.
 */
final class ComingForFill {
    private final SeasonTables tables;
    private final FieldTable fields;
    private final PlanterTable table;
    private final State state;
    private final LoadRequest request;
    private final FieldOrder order;
    private final Requests requests;
    private final Flushing flushing;

    ComingForFill(
            SeasonTables tables,
            State state,
            LoadRequest request,
            FieldOrder order,
            Requests requests,
            Flushing flushing) {
        this.tables = tables;
        this.fields = tables.fields();
        this.table = tables.planters();
        this.state = state;
        this.request = request;
        this.order = order;
        this.requests = requests;
        this.flushing = flushing;
    }

    /** For a load. */
    void before(Delivery delivery) {
        come(delivery.transferStart(), delivery.rigReady(), delivery.trip().isWaitedFor());
    }

    /** When a planter that is to be filled at {@code fillS}, as it turns out, is there for that. */
    int there(int fillS) {
        int planter = request.planter();
        if (table.isMounted(planter) || state.planters().place(planter) == request.place()) {
            return fillS;
        }
        return driveEnd(planter, requests.setOff(planter, fillS), driveS(planter));
    }

    private int driveS(int planter) {
        return table.moveS(planter, tables.places().metres(state.planters().place(planter), request.place()));
    }

    private int driveEnd(int planter, int start, int plannedS) {
        ActualTimes actual = state.actual();
        return actual == null ? start + plannedS : actual.planterDriveEnd(planter, start, plannedS);
    }

    /** To plant without one, as soon as it can. */
    void without() {
        come(request.needS(), request.needS(), false);
    }

    /** How long it would wait for a rig, s of its working time: that for hours does not count. */
    int waitS(Delivery delivery) {
        boolean waits = delivery.rigReady() > request.needS();
        return waits ? table.hours(request.planter()).work(request.needS(), delivery.transferStart()) : 0;
    }

    private void come(int start, int rigReady, boolean waitsForWater) {
        int planter = request.planter();
        if (table.isMounted(planter)) {
            state.planters().awaitCompostNoMore(planter);
            state.planters().stand(planter, request.place(), start);
            return;
        }
        boolean compost = state.planters().awaitsCompost(planter);
        int since = compost ? state.planters().waitFromS(planter) : request.needS();
        state.planters().awaitCompostNoMore(planter);
        boolean drives = state.planters().place(planter) != request.place();
        int metres = drives ? tables.places().metres(state.planters().place(planter), request.place()) : 0;
        int setOff = drives ? requests.setOff(planter, start) : start;
        int there = drives ? driveEnd(planter, setOff, table.moveS(planter, metres)) : start;
        int stands = standsFrom(planter, state.planters().timeS(planter), setOff);
        int waitFrom = Math.min(start, Math.max(since, couldPlantFrom(planter, stands)));
        WaitReason why = compost ? WaitReason.COMPOST : reason(rigReady, waitsForWater, waitFrom);
        stand(planter, stands, setOff, waitFrom, why);
        if (drives) {
            move(planter, metres, setOff, there);
            stand(planter, standsFrom(planter, there, start), start, waitFrom, why);
        }
    }

    /** From when on it stands in its hours after work, until it works next: where a day ends in between, it is flushed first. */
    private int standsFrom(int planter, int worksUntil, int worksNext) {
        return table.hours(planter).next(flushing.free(planter, worksUntil, worksNext));
    }

    /** The first moment from a time on at which planting of its next field could start, if it were there with a load. */
    private int couldPlantFrom(int planter, int from) {
        int field = order.field(planter, state.planters().index(planter));
        return table.plantable(planter, field).next(Math.max(from, fields.openS(field)));
    }

    private void move(int planter, int metres, int start, int end) {
        state.tally().add(Tally.DRIVE_S, table.driveS(planter, metres));
        state.tally().add(Tally.DRIVE_M, metres);
        state.days().left(planter, start);
        state.hours().planterWorked(planter, start, end);
        if (state.isTold()) {
            state.journal().planterMoved(planter, state.planters().place(planter), request.place(), start, end);
        }
        state.planters().stand(planter, request.place(), end);
    }

    /** Stands from one time to another: first for the field, then, from when that could be planted, for the load. */
    private void stand(int planter, int from, int until, int waitFrom, WaitReason why) {
        int place = state.planters().place(planter);
        int couldPlantFrom = couldPlantFrom(planter, from);
        int turn = Math.max(from, Math.min(Math.max(waitFrom, couldPlantFrom), until));
        int closedUntil = Math.min(turn, couldPlantFrom);
        if (from < closedUntil) {
            state.idle().stood(planter, from, closedUntil);
            if (state.isTold()) {
                int field = order.field(planter, state.planters().index(planter));
                state.journal().waited(planter, place, from, closedUntil, closed(planter, field, from));
            }
        }
        if (turn >= until) {
            return;
        }
        if (why != WaitReason.HOURS) {
            state.tally().add(Tally.WAIT_S, table.hours(planter).work(turn, until));
            state.hours().waited(planter, turn, until);
        }
        if (state.isTold()) {
            state.journal().waited(planter, place, turn, until, why);
        }
    }

    /** Why planting of a field could not start at a moment of the planter's hours. */
    private WaitReason closed(int planter, int field, int s) {
        if (s < fields.openS(field)) {
            return WaitReason.WINDOW;
        }
        return table.isDry(planter, field, s) ? WaitReason.SPRAY_HOURS : WaitReason.WET;
    }

    private static WaitReason reason(int rigReady, boolean waitsForWater, int from) {
        if (rigReady <= from) {
            return WaitReason.HOURS;
        }
        return waitsForWater ? WaitReason.WATER : WaitReason.RIG;
    }
}
