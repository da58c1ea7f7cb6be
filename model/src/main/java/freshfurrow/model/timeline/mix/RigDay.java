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
        Answer answer = new Answer(
                start,
                delivery.plantBy(),
                delivery.compost().mg(),
                delivery.trip().point());
        boolean waited = delivery.trip().isWaitedFor();
        int ready = delivery.rigReady();
        int evening = evening(delivery, day);
        if (!canBegin(source, delivery, day, answer)
                && (evening <= begins || !canBegin(source, delivery, evening, answer))) {
            plan(source, delivery, before);
            source.lay(delivery, together);
        }
        delivery.trip().waitedFor(waited);
        delivery.rigReady(ready);
    }

    /** What a rig brings, and when, if it begins as soon as it can. */
    private record Answer(int start, int plantBy, long fetchedMg, int waterPoint) {}

    /** Whether a rig that begins so late brings the same: with water of the point that gives it soonest then, or else of the same as before. */
    private static boolean canBegin(MixSource source, Delivery delivery, int notBefore, Answer answer) {
        if (isAsGood(source, delivery, notBefore, answer)) {
            return true;
        }
        if (delivery.trip().point() == answer.waterPoint) {
            return false;
        }
        delivery.trip().onlyBy(answer.waterPoint);
        boolean asGood = isAsGood(source, delivery, notBefore, answer);
        delivery.trip().byAnyPoint();
        return asGood;
    }

    /** Batches lie as late as the transfer lets them, so that they are those of the answer where the rig is there for them. */
    private static boolean isAsGood(MixSource source, Delivery delivery, int notBefore, Answer answer) {
        plan(source, delivery, notBefore);
        if (delivery.transferStart() > answer.start || delivery.compost().mg() < answer.fetchedMg) {
            return false;
        }
        delivery.putOff(answer.start);
        source.lay(delivery, false);
        return delivery.plantBy() >= answer.plantBy;
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
