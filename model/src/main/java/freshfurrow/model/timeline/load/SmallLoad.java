package freshfurrow.model.timeline.load;

import freshfurrow.model.timeline.mix.MixSource;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.state.CompostLots;
import freshfurrow.model.timeline.state.PlanterStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.LoadLimits;
import freshfurrow.model.timeline.tables.RecipeTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * Whether a load is too small to be brought: less than the planter's least fill, unless it finishes a field, a recipe, a mix or the compost, or the
 * planter was put off for it before.
 */
final class SmallLoad {
    private final LoadLimits limits;
    private final RecipeTable recipes;
    private final LoadRequest request;
    private final PlanterStates planters;
    private final CompostLots lots;

    SmallLoad(SeasonTables tables, State state, LoadRequest request) {
        this.limits = tables.loadLimits();
        this.recipes = tables.recipes();
        this.request = request;
        this.planters = state.planters();
        this.lots = state.lots();
    }

    boolean isTooSmall(MixSource source, Delivery delivery) {
        int planter = request.planter();
        long dm2 = delivery.loadDm2();
        return dm2 < limits.least(planter, request.recipe())
                && dm2 < planters.leftDm2(planter)
                && planters.postponed(planter) == 0
                && !usesUpMix(source, delivery)
                && !usesUpCompost(delivery);
    }

    private static boolean usesUpMix(MixSource source, Delivery delivery) {
        long made = source.extractedDm2(delivery.rig());
        return made > 0 && delivery.loadDm2() > made - Leeway.CRUMB_DM2;
    }

    private boolean usesUpCompost(Delivery delivery) {
        long leftMg = lots.allMg() - delivery.extraction().compostMg();
        return recipes.areaOfCompost(Math.max(0, leftMg), request.recipe()) < Leeway.CRUMB_DM2;
    }
}
