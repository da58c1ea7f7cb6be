package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Preparation;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.WaterPoints;
import freshfurrow.model.timeline.state.RigStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** Where each rig takes mix from: made anew, or from what it has made before. */
public final class MixSources {
    private final FreshMix[] fresh;
    private final MixSource[] made;
    private final PlanterTable planters;
    private final LoadRequest request;
    private final RigStates states;

    public MixSources(
            SeasonTables tables,
            LoadRequest request,
            State state,
            Preparation preparation,
            RigTimes times,
            WaterPoints points) {
        this.planters = tables.planters();
        this.request = request;
        this.states = state.rigs();
        FreshMix beside = new BatchesBesidePlanter(tables, request, state, preparation, times, points);
        FreshMix atWater = new BatchesAtWater(tables, request, state, preparation, times, points);
        MixSource begun = new MixBegun(tables, request, state, preparation, times);
        MixSource onBoard = new MixOnBoard(tables, request, state, preparation, times);
        int rigs = tables.rigs().count();
        fresh = new FreshMix[rigs];
        made = new MixSource[rigs];
        for (int r = 0; r < rigs; r++) {
            boolean extractsAtWater = tables.rigs().extractsAtWater(r);
            fresh[r] = extractsAtWater ? atWater : beside;
            made[r] = extractsAtWater ? onBoard : begun;
        }
    }

    /** Of mix that the rig makes anew. */
    public FreshMix fresh(int rig) {
        return fresh[rig];
    }

    /** Of mix that the rig has on board. */
    public MixSource made(int rig) {
        return made[rig];
    }

    /** Whether the rig has mix of the recipe that is asked for. */
    public boolean hasMade(int rig) {
        return isWorthAFill(rig) && states.mixRecipe(rig) == request.recipe();
    }

    /** Whether any rig that may serve a planter has mix of a recipe that is not too old when it is asked for, so that no compost is needed. */
    public boolean hasMix(int planter, int recipe, int when) {
        for (int r = 0; r < made.length; r++) {
            if (planters.isServedBy(planter, r)
                    && isWorthAFill(r)
                    && states.mixRecipe(r) == recipe
                    && states.mixPlantByS(r) > when) {
                return true;
            }
        }
        return false;
    }

    /** A remainder that rounding leaves is none. */
    private boolean isWorthAFill(int rig) {
        return states.mixDm2(rig) >= Leeway.CRUMB_DM2;
    }
}
