package freshfurrow.model.timeline.load;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.calendar.Calendar;
import freshfurrow.model.timeline.planters.FieldOrder;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.planters.Planting;
import freshfurrow.model.timeline.planters.Requests;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** A planter that asks for a load goes on without extract: for the rest of the field, or until a load is to be had. */
final class WithoutExtract {
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

    /**
     * Plants until a time at the latest, and says whether it did; it then asks again. One that asks where its last load ended asks at its next field
     * first. A field of which nothing can be planted until the season ends is given up.
     */
    boolean plant(int untilS) {
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
            planting.plantWithout(planter, request.needS(), untilS);
        }
        state.planters().postponeNoMore(planter);
        requests.ask(planter);
        return true;
    }

    /** The same where that is allowed in its next field. */
    boolean plantIfAllowed(int untilS) {
        return isAllowed() && plant(untilS);
    }

    /** Plants until the load would come rather than to wait for that for longer than the planter waits. */
    boolean plantRatherThanWait(Delivery delivery) {
        return isAllowed()
                && coming.waitS(delivery) > table.longestWaitS(request.planter())
                && plant(delivery.transferStart());
    }

    /** Plants for the rest of the planting period rather than to wait for the next one, where that is too long or was done too often. */
    boolean plantRatherThanPostpone() {
        int planter = request.planter();
        if (!isAllowed()) {
            return false;
        }
        if (requests.isHopelessOncePostponed(planter)) {
            return plant(NEVER);
        }
        Calendar plantable = table.plantable(planter, field());
        int end = plantable.endOf(plantable.periodAt(request.needS()));
        return end - request.needS() > table.longestWaitS(planter) && plant(end);
    }

    private boolean isAllowed() {
        return fields.mayGoWithout() && fields.mayGoWithout(field());
    }

    private int field() {
        return order.field(request.planter(), state.planters().index(request.planter()));
    }
}
