package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.Preparation;
import freshfurrow.model.timeline.rigs.RigWork;
import freshfurrow.model.timeline.state.State;

/**
 * Where the mix of a load comes from: how much of it there can be, how soon a load out of it can come, and what a rig does for that.
 * There is one of each kind for each timeline, for all rigs.
 */
public abstract sealed class MixSource permits FreshMix, MixOnBoard, MixBegun {
    final LoadRequest request;
    final State state;
    final Preparation preparation;

    MixSource(LoadRequest request, State state, Preparation preparation) {
        this.request = request;
        this.state = state;
        this.preparation = preparation;
    }

    /** Whether the mix is made anew, so that what other mix is on board is let out; else some or all of it is there. */
    public abstract boolean isFresh();

    /** Whether one mix may be for several fills. */
    public abstract boolean servesSeveralFills();

    /** The largest mix that the rig can have of it, compost and planter aside, dm2. */
    abstract long mostDm2(int rig);

    /** Area whose compost is extracted already, dm2. */
    public abstract long extractedDm2(int rig);

    /** Works out when the transfer of the load that the delivery names can start, out of the mix that it names. */
    abstract void plan(Delivery delivery);

    /**
     * Works out how old the mix is then, of a delivery that {@link #plan} has brought into the season.
     *
     * @param together make all batches after a break rather than some before it
     */
    final void lay(Delivery delivery, boolean together) {
        if (delivery.extraction().batches() == 0 || preparation.lay(delivery, together)) {
            date(delivery);
        }
    }

    /** Tells of a delivery until when its mix keeps, and by when it is to be planted. */
    abstract void date(Delivery delivery);

    /**
     * A {@link Rank} that the rig's answer is not before, and is equal to but for rounding, breaks of the rig and queues.
     *
     * @param fresh what the rig would make anew
     */
    public abstract long soonest(int rig, FreshLoad fresh);

    /** Does for real all up to the transfer. */
    public abstract void bring(Delivery delivery, RigWork work);
}
