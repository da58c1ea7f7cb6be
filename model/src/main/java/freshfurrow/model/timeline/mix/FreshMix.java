package freshfurrow.model.timeline.mix;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.season.ClockChanges;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.Preparation;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.WaterPoints;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.PlaceTable;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.RecipeTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;
import freshfurrow.model.timeline.tables.WaterTable;

/** Mix made anew for a request. */
public abstract sealed class FreshMix extends MixSource permits BatchesBesidePlanter, BatchesAtWater {
    final RecipeTable recipes;
    final PlaceTable places;
    final PlanterTable planters;
    final WaterTable water;
    final RigTable rigs;
    private final ClockChanges clock;
    private final RigTimes times;
    private final WaterPoints points;

    FreshMix(
            SeasonTables tables,
            LoadRequest request,
            State state,
            Preparation preparation,
            RigTimes times,
            WaterPoints points) {
        super(request, state, preparation);
        this.recipes = tables.recipes();
        this.places = tables.places();
        this.planters = tables.planters();
        this.water = tables.water();
        this.rigs = tables.rigs();
        this.clock = tables.clock();
        this.times = times;
        this.points = points;
    }

    @Override
    public final boolean isFresh() {
        return true;
    }

    @Override
    public final long extractedDm2(int rig) {
        return 0;
    }

    @Override
    final void date(Delivery delivery) {
        int oldestEnd = delivery.extraction().oldestEnd();
        delivery.keeps(
                clock.after(oldestEnd, recipes.plannedHoldS(request.recipe())),
                clock.after(oldestEnd, recipes.holdS(request.recipe())));
    }

    /** Water on board that it can be made of. */
    abstract long usableWaterMl(int rig);

    /** The most that is drawn for it. */
    abstract long roomMl(int rig, FreshLoad fresh);

    private long lackMl(int rig, FreshLoad fresh) {
        return fresh.leastMl - usableWaterMl(rig);
    }

    /** A {@link Rank} that the rig's answer is not before, told by the shortest ways to water. */
    public final long atBest(int rig, FreshLoad fresh) {
        if (fresh.dm2 == 0) {
            return Rank.OUT;
        }
        if (fetchesCompost(rig, fresh)) {
            return atBestWithCompost(rig, fresh);
        }
        long lackMl = lackMl(rig, fresh);
        int from = state.rigs().place(rig);
        int place = request.place();
        int way = lackMl > 0 ? water.metresToWater(from) + water.metresToWater(place) : places.metres(from, place);
        int drawS = lackMl > 0 ? water.leastDrawS(lackMl) : 0;
        int ready = times.freeS(rig, request.needS()) + fresh.chainS + drawS + rigs.leastDriveS(rig, way);
        return Rank.of(Math.max(fresh.takenFrom, ready), way);
    }

    private boolean fetchesCompost(int rig, FreshLoad fresh) {
        return state.lots().lackMg(rig, fresh.compostMg) > 0;
    }

    /** Without its ways: where compost is fetched first, they are not told by the shortest ones. */
    private long atBestWithCompost(int rig, FreshLoad fresh) {
        return Rank.of(Math.max(fresh.takenFrom, times.freeS(rig, request.needS()) + fresh.chainS), 0);
    }

    @Override
    public final long soonest(int rig, FreshLoad fresh) {
        if (fetchesCompost(rig, fresh)) {
            return atBestWithCompost(rig, fresh);
        }
        int from = state.rigs().place(rig);
        int place = request.place();
        int free = times.freeS(rig, request.needS());
        long lackMl = lackMl(rig, fresh);
        int there = NEVER;
        int way = NEVER;
        if (lackMl <= 0) {
            way = places.metres(from, place);
            there = free + rigs.leastDriveS(rig, way);
        } else {
            long roomMl = roomMl(rig, fresh);
            for (int point = 0; point < water.count(); point++) {
                int at = water.place(point);
                int to = places.metres(from, at);
                int onward = places.metres(at, place);
                int draw = points.soonestDraw(point, free + rigs.leastDriveS(rig, to), lackMl, roomMl, rigs.hours(rig));
                there = Math.min(
                        there, draw + points.shortestDrawS(point, lackMl, roomMl) + rigs.leastDriveS(rig, onward));
                way = Math.min(way, to + onward);
            }
        }
        int ready = Math.max(request.needS(), there + fresh.chainS);
        return Rank.of(planters.hours(request.planter()).earliest(ready, fresh.transferS), way);
    }
}
