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

/** Batches made at the water point, for as many fills as they are enough for: {@link ExtractAt#WATER}. */
final class BatchesAtWater extends FreshMix {
    BatchesAtWater(
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
        return true;
    }

    @Override
    long mostDm2(int rig) {
        return Math.min(
                rigs.nurseDm2(rig, request.recipe()), recipes.areaOfMix(water.largestDailyLimitMl(), request.recipe()));
    }

    @Override
    long usableWaterMl(int rig) {
        return 0;
    }

    @Override
    long roomMl(int rig, FreshLoad fresh) {
        return fresh.waterMl;
    }

    @Override
    void plan(Delivery delivery) {
        int rig = delivery.rig();
        long mixDm2 = delivery.mixDm2();
        preparation.begin(delivery);
        preparation.letOut(delivery);
        delivery.extraction().plan(rig, recipes.compostMg(mixDm2, request.recipe()));
        long leastMl = recipes.mixMl(Leeway.least(mixDm2), request.recipe());
        long mostMl = Math.min(recipes.mixMl(mixDm2, request.recipe()), rigs.nurseMl(rig));
        int drawn = preparation.drawnWithCompost(delivery, leastMl, mostMl);
        preparation.extract(delivery, drawn, delivery.trip().onwardS());
    }

    @Override
    public void bring(Delivery delivery, RigWork work) {
        work.letOut(delivery);
        work.newMix(delivery);
        work.makeAtWater(delivery);
        date(delivery);
        work.carry(delivery);
    }
}
