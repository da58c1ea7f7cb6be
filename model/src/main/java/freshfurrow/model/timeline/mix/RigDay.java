package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.WaterTrip;
import freshfurrow.model.timeline.state.RigStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * From when on a rig gets ready for a load: on the day it is asked for, from the rig's own hours on; on its last working day before only
 * where the load would come later otherwise, and then as late as what it does there fits in one piece.
 */
public final class RigDay {
    private final RigTable rigs;
    private final RigStates states;
    private final LoadRequest request;
    private final RigTimes times;

    public RigDay(SeasonTables tables, State state, LoadRequest request, RigTimes times) {
        this.rigs = tables.rigs();
        this.states = state.rigs();
        this.request = request;
        this.times = times;
    }

    /** Works out when the load that the delivery names can start, out of the mix that it names. */
    void plan(MixSource source, Delivery delivery) {
        int rig = delivery.rig();
        int today = midnight(request.needS());
        plan(source, delivery, today);
        if (states.freeS(rig) < today && !isAtOnce(delivery)) {
            int startToday = delivery.transferStart;
            plan(source, delivery, rigs.readyFromS(rig, request.needS()));
            if (delivery.transferStart >= startToday) {
                plan(source, delivery, today);
            }
        }
        if (delivery.isInSeason()) {
            asLateAsMayBe(source, delivery);
        }
    }

    private static void plan(MixSource source, Delivery delivery, int notBefore) {
        delivery.notBefore(notBefore);
        source.plan(delivery);
    }

    private static int midnight(int s) {
        return s / Calendars.DAY_S * Calendars.DAY_S;
    }

    private boolean isAtOnce(Delivery delivery) {
        return delivery.transferStart
                == times.fitTransfer(request.planter(), delivery.rig(), request.needS(), delivery.transferS());
    }

    /** What is done on a day before that of the transfer waits for that day, or for the end of the last working day before it. */
    private void asLateAsMayBe(MixSource source, Delivery delivery) {
        int rig = delivery.rig();
        int start = delivery.transferStart;
        int before = delivery.notBefore();
        int day = midnight(start);
        if (day <= Math.max(before, states.freeS(rig))) {
            return;
        }
        boolean waited = delivery.trip().isWaitedFor();
        int ready = delivery.rigReady();
        int evening = evening(delivery, day);
        if (!isStillAt(start, source, delivery, day)
                && !(evening > Math.max(before, states.freeS(rig)) && isStillAt(start, source, delivery, evening))) {
            plan(source, delivery, before);
        }
        delivery.trip().waitedFor(waited);
        delivery.rigReady(ready);
    }

    private static boolean isStillAt(int start, MixSource source, Delivery delivery, int notBefore) {
        plan(source, delivery, notBefore);
        return delivery.transferStart == start;
    }

    /** The last moment before a day from which on a rig does in one piece all that comes before the transfer. */
    private int evening(Delivery delivery, int day) {
        int inOnePiece = inOnePieceS(delivery);
        return rigs.hours(delivery.rig()).latest(day, inOnePiece) - inOnePiece;
    }

    /** The drive to the planter, by the water point if there is a trip, with the draw and the batches, s. */
    private int inOnePieceS(Delivery delivery) {
        int rig = delivery.rig();
        WaterTrip trip = delivery.trip();
        int batchesS = delivery.extraction().batches() == 0
                ? 0
                : delivery.extraction().chainS() + (states.isCleanDue(rig) ? rigs.cleanS(rig) : 0);
        return trip.isMade()
                ? times.driveS(rig, states.place(rig), trip.at()) + trip.drawS() + trip.onwardS() + batchesS
                : times.driveS(rig, states.place(rig), request.place()) + batchesS;
    }
}
