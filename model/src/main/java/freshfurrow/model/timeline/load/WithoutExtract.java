package freshfurrow.model.timeline.load;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.planters.FieldOrder;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.planters.Planting;
import freshfurrow.model.timeline.planters.Requests;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.state.WithoutReason;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** A planter that asks for a load goes on without extract: for the rest of the field, or until a load is to be had. */
final class WithoutExtract {
    private static final int NO_RIG = -1;

    private final FieldTable fields;
    private final PlanterTable table;
    private final State state;
    private final LoadRequest request;
    private final FieldOrder order;
    private final Requests requests;
    private final Planting planting;
    private final ComingForFill coming;

    WithoutExtract(
            SeasonTables tables,
            State state,
            LoadRequest request,
            FieldOrder order,
            Requests requests,
            Planting planting,
            ComingForFill coming) {
        this.fields = tables.fields();
        this.table = tables.planters();
        this.state = state;
        this.request = request;
        this.order = order;
        this.requests = requests;
        this.planting = planting;
        this.coming = coming;
    }

    /** Plants what is to be planted so. */
    void plantAsDecided() {
        plant(WithoutReason.DECIDED, NEVER);
    }

    /** Plants until there is compost again, where that is allowed. */
    boolean plantWithoutCompost(int lotFromS) {
        return isAllowed() && plant(WithoutReason.COMPOST, lotFromS);
    }

    /** Plants for want of any load in the season, where that is allowed. */
    boolean plantForWantOfLoads() {
        return isAllowed() && plant(WithoutReason.NO_LOAD, NEVER);
    }

    private boolean plant(WithoutReason why, int untilS) {
        return plant(why, untilS, NO_RIG, 0);
    }

    /**
     * Plants until a time at the latest, and says whether it did; it then asks again. One that asks where its last load ended asks at its next field
     * first. A field of which nothing can be planted until the season ends is given up.
     */
    private boolean plant(WithoutReason why, int untilS, int rig, int waitS) {
        int planter = request.planter();
        if (!state.planters().asksAfresh(planter)) {
            requests.askAtNextField(planter);
            return true;
        }
        if (planting.dm2Without(planter, request.place(), request.needS(), untilS) == 0) {
            if (untilS < NEVER) {
                return false;
            }
            requests.giveUpField(planter);
        } else {
            coming.without();
            if (state.isTold()) {
                state.journal().goesWithout(planter, why, untilS, rig, waitS);
            }
            planting.plantWithout(planter, request.needS(), untilS);
        }
        state.planters().postponeNoMore(planter);
        requests.ask(planter);
        return true;
    }

    /** Plants until the load would come rather than to wait for that for longer than the planter waits. */
    boolean plantRatherThanWait(Delivery delivery) {
        if (!isAllowed()) {
            return false;
        }
        int waitS = coming.waitS(delivery);
        return waitS > table.longestWaitS(request.planter())
                && plant(WithoutReason.LONG_WAIT, delivery.transferStart(), delivery.rig(), waitS);
    }

    /** Plants for the rest of the planting period rather than to wait for the next one, where that is too long or was done too often. */
    boolean plantRatherThanPostpone() {
        int planter = request.planter();
        if (!isAllowed()) {
            return false;
        }
        if (requests.isHopelessOncePostponed(planter)) {
            return plant(WithoutReason.SMALL_LOAD, NEVER);
        }
        Calendar plantable = table.plantable(planter, field());
        int end = plantable.endOf(plantable.periodAt(request.needS()));
        return end - request.needS() > table.longestWaitS(planter) && plant(WithoutReason.SMALL_LOAD, end);
    }

    private boolean isAllowed() {
        return fields.mayGoWithout() && fields.mayGoWithout(field());
    }

    private int field() {
        return order.field(request.planter(), state.planters().index(request.planter()));
    }
}
