package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.planters.FieldRun;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.state.CompostLots;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.RecipeTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** How much a rig could bring of a source's mix at the most, whatever its age. */
public final class LoadCeiling {
    private final LoadRequest request;
    private final RecipeTable recipes;
    private final PlanterTable planters;
    private final RigTable rigs;
    private final CompostLots lots;
    private final FieldRun run;

    public LoadCeiling(SeasonTables tables, LoadRequest request, CompostLots lots, FieldRun run) {
        this.request = request;
        this.recipes = tables.recipes();
        this.planters = tables.planters();
        this.rigs = tables.rigs();
        this.lots = lots;
        this.run = run;
    }

    /** The most that tank, rig, compost and the run of fields of the recipe allow, dm2. */
    public long dm2(MixSource source, int rig) {
        int recipe = request.recipe();
        long bound = source.mostDm2(rig);
        if (!source.servesSeveralFills()) {
            bound = Math.min(bound, planters.tankDm2(request.planter(), recipe));
        }
        long most = Leeway.most(bound);
        long fields = run.dm2(most);
        if (fields <= most) {
            bound = fields;
        }
        long extractedDm2 = source.extractedDm2(rig);
        if (bound <= extractedDm2) {
            return bound;
        }
        long compostMg = lots.mostMg(rig);
        return CompostLots.isEnough(compostMg, recipes.compostMg(bound - extractedDm2, recipe))
                ? bound
                : extractedDm2 + recipes.areaOfCompost(compostMg, recipe);
    }

    /** The same of a quote's source and rig, worked out once for a request. */
    public long of(Quote quote) {
        if (!quote.hasCeiling()) {
            quote.ceiling(dm2(quote.source(), quote.rig()));
        }
        return quote.ceilingDm2();
    }

    /** Of a ceiling what one batch comes to at the most, dm2. */
    public long oneBatch(long ceiling, int rig) {
        return Math.min(ceiling, recipes.areaOfCompost(rigs.batchMg(rig), request.recipe()));
    }
}
