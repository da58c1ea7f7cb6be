package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.Preparation;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.RigWork;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** Mix that is already on the rig, made at the water for several fills. */
final class MixOnBoard extends MixSource {
    private final PlaceTable places;
    private final RigTable rigs;
    private final RigTimes times;

    MixOnBoard(SeasonTables tables, LoadRequest request, State state, Preparation preparation, RigTimes times) {
        super(request, state, preparation);
        this.places = tables.places();
        this.rigs = tables.rigs();
        this.times = times;
    }

    @Override
    public boolean isFresh() {
        return false;
    }

    @Override
    public boolean servesSeveralFills() {
        return false;
    }

    @Override
    long mostDm2(int rig) {
        return state.rigs().mixDm2(rig);
    }

    @Override
    public long extractedDm2(int rig) {
        return state.rigs().mixDm2(rig);
    }

    @Override
    void plan(Delivery delivery) {
        preparation.begin(delivery);
        delivery.extraction().none();
        preparation.transfer(delivery, preparation.there(delivery));
    }

    @Override
    void date(Delivery delivery) {
        delivery.keeps(state.rigs().mixPlantByS(delivery.rig()), state.rigs().mixUseByS(delivery.rig()));
    }

    @Override
    public long soonest(int rig, FreshLoad fresh) {
        int way = places.metres(state.rigs().place(rig), request.place());
        int ready = times.freeS(rig, request.needS()) + rigs.leastDriveS(rig, way);
        return Rank.of(Math.max(request.needS(), ready), way);
    }

    @Override
    public void bring(Delivery delivery, RigWork work) {
        work.driveToPlanter(delivery, delivery.dumpEnd());
    }
}
