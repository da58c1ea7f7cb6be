package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.Preparation;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.RigWork;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.RecipeTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;
import freshfurrow.model.timeline.tables.WaterTable;

/** Batches made beside a planter before, and as many more as the load asks for. */
final class MixBegun extends MixSource {
    private final RecipeTable recipes;
    private final PlaceTable places;
    private final WaterTable water;
    private final RigTable rigs;
    private final RigTimes times;

    MixBegun(SeasonTables tables, LoadRequest request, State state, Preparation preparation, RigTimes times) {
        super(request, state, preparation);
        this.recipes = tables.recipes();
        this.places = tables.places();
        this.water = tables.water();
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
        if (water.largestDailyLimitMl() >= rigs.nurseMl(rig)) {
            return rigs.nurseDm2(rig, request.recipe());
        }
        long onBoardMl = state.rigs().waterMl(rig) + begunMl(rig);
        return recipes.areaOfMix(
                Math.min(rigs.nurseMl(rig), onBoardMl + water.largestDailyLimitMl()), request.recipe());
    }

    @Override
    public long extractedDm2(int rig) {
        return state.rigs().mixDm2(rig);
    }

    private long begunMl(int rig) {
        return recipes.mixMl(state.rigs().mixDm2(rig), request.recipe());
    }

    @Override
    void plan(Delivery delivery) {
        int rig = delivery.rig();
        int recipe = request.recipe();
        long mixDm2 = delivery.mixDm2();
        preparation.begin(delivery);
        delivery.extraction()
                .planRest(
                        rig,
                        recipes.compostMg(mixDm2, recipe)
                                - recipes.compostMg(state.rigs().mixDm2(rig), recipe));
        long onBoardMl = begunMl(rig) + state.rigs().waterMl(rig);
        long leastMl = recipes.mixMl(Leeway.least(mixDm2), recipe);
        int ready = preparation.thereWithAll(delivery, leastMl - onBoardMl, rigs.nurseMl(rig) - onBoardMl);
        if (delivery.extraction().batches() == 0) {
            preparation.transfer(delivery, ready);
        } else {
            preparation.extract(delivery, ready, 0);
        }
    }

    @Override
    void date(Delivery delivery) {
        delivery.keeps(state.rigs().mixPlantByS(delivery.rig()), state.rigs().mixUseByS(delivery.rig()));
    }

    @Override
    public long soonest(int rig, FreshLoad fresh) {
        if (state.lots().areFetched()) {
            return Rank.of(Math.max(request.needS(), times.freeS(rig, request.needS())), 0);
        }
        int from = state.rigs().place(rig);
        int way = Math.min(places.metres(from, request.place()), water.metresByWater(from, request.place()));
        int ready = times.freeS(rig, request.needS()) + rigs.leastDriveS(rig, way);
        return Rank.of(Math.max(request.needS(), ready), way);
    }

    @Override
    public void bring(Delivery delivery, RigWork work) {
        work.makeBesidePlanter(delivery);
    }
}
