package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.calendar.Calendars;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.state.RigStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * From when on a rig gets ready for a load. How large the load is and when it comes is found as if the rig might begin on its last
 * working day before; once that is settled, the rig begins on the day of the load, from its own hours on, or on the evening before as late
 * as what it does there fits in one piece, wherever the load is as fresh and as soon.
 */
public final class RigDay {
    private final RigTable rigs;
    private final RigStates states;
    private final LoadRequest request;

    public RigDay(SeasonTables tables, State state, LoadRequest request) {
        this.rigs = tables.rigs();
        this.states = state.rigs();
        this.request = request;
    }

    /** Works out how soon the load that the delivery names can start, out of the mix that it names. */
    void plan(MixSource source, Delivery delivery) {
        plan(source, delivery, rigs.readyFromS(delivery.rig(), request.needS()));
    }

    private static void plan(MixSource source, Delivery delivery, int notBefore) {
        delivery.notBefore(notBefore);
        source.plan(delivery);
    }

    /**
     * Has the rig of a delivery whose batches are laid begin as late as may be.
     *
     * @param together as its batches were laid
     */
    void settle(MixSource source, Delivery delivery, boolean together) {
        int before = delivery.notBefore();
        int begins = Math.max(before, states.freeS(delivery.rig()));
        int start = delivery.transferStart();
        int day = midnight(start);
        if (day <= begins) {
            return;
        }
        int plantBy = delivery.plantBy();
        long fetchedMg = delivery.compost().mg();
        boolean waited = delivery.trip().isWaitedFor();
        int ready = delivery.rigReady();
        int evening = evening(delivery, day);
        planAndLay(source, delivery, together, day);
        if (!isAsGood(delivery, start, plantBy, fetchedMg) && evening > begins) {
            planAndLay(source, delivery, together, evening);
        }
        if (!isAsGood(delivery, start, plantBy, fetchedMg)) {
            planAndLay(source, delivery, together, before);
        }
        delivery.trip().waitedFor(waited);
        delivery.rigReady(ready);
    }

    private static boolean isAsGood(Delivery delivery, int start, int plantBy, long fetchedMg) {
        return delivery.transferStart() == start
                && delivery.plantBy() >= plantBy
                && delivery.compost().mg() >= fetchedMg;
    }

    private static void planAndLay(MixSource source, Delivery delivery, boolean together, int notBefore) {
        plan(source, delivery, notBefore);
        if (delivery.isInSeason()) {
            source.lay(delivery, together);
        }
    }

    private static int midnight(int s) {
        return s / Calendars.DAY_S * Calendars.DAY_S;
    }

    /** The last moment before a day from which on a rig does in one piece all that comes before the transfer. */
    private int evening(Delivery delivery, int day) {
        int inOnePiece = inOnePieceS(delivery);
        return rigs.hours(delivery.rig()).latest(day, inOnePiece) - inOnePiece;
    }

    /** The drive to the planter, by the water point and the compost if there are trips, with what is done there and the batches, s. */
    private int inOnePieceS(Delivery delivery) {
        int rig = delivery.rig();
        int batchesS = delivery.extraction().batches() == 0
                ? 0
                : delivery.extraction().chainS() + (states.isCleanDue(rig) ? rigs.cleanS(rig) : 0);
        return delivery.fetchS() + batchesS;
    }
}
