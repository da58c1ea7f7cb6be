package freshfurrow.model.timeline.mix;

import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.Preparation;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.RigWork;
import freshfurrow.model.timeline.rigs.WaterPoints;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.SeasonTables;

/** Batches made beside the planter: {@link ExtractAt#FIELD}. Water left over from one load stays on board for the next. */
final class BatchesBesidePlanter extends FreshMix {
    BatchesBesidePlanter(
            SeasonTables tables,
            LoadRequest request,
            State state,
            Preparation preparation,
            RigTimes times,
            WaterPoints points) {
        super(tables, request, state, preparation, times, points);
    }

    @Override
    public boolean servesSeveralFills() {
        return false;
    }

    @Override
    long mostDm2(int rig) {
        return water.largestDailyLimitMl() >= rigs.nurseMl(rig)
                ? rigs.nurseDm2(rig, request.recipe())
                : recipes.areaOfMix(
                        Math.min(rigs.nurseMl(rig), state.rigs().waterMl(rig) + water.largestDailyLimitMl()),
                        request.recipe());
    }

    @Override
    long usableWaterMl(int rig) {
        return state.rigs().waterMl(rig);
    }

    @Override
    long roomMl(int rig, FreshLoad fresh) {
        return rigs.nurseMl(rig) - state.rigs().waterMl(rig);
    }

    @Override
    void plan(Delivery delivery) {
        int rig = delivery.rig();
        long mixDm2 = delivery.mixDm2();
        preparation.begin(delivery);
        preparation.letOut(delivery);
        delivery.extraction().plan(rig, recipes.compostMg(mixDm2, request.recipe()));
        long onBoardMl = state.rigs().waterMl(rig);
        long leastMl = recipes.mixMl(Leeway.least(mixDm2), request.recipe());
        int ready = preparation.thereWithAll(delivery, leastMl - onBoardMl, rigs.nurseMl(rig) - onBoardMl);
        preparation.extract(delivery, ready, 0);
    }

    @Override
    public void bring(Delivery delivery, RigWork work) {
        work.letOut(delivery);
        work.newMix(delivery);
        work.makeBesidePlanter(delivery);
        date(delivery);
    }
}
