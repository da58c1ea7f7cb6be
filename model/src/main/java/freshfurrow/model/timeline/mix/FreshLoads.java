package freshfurrow.model.timeline.mix;

import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Extraction;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.SeasonTables;

/** The loads that rigs would make anew for a request: worked out once for all rigs that are alike. */
public final class FreshLoads {
    private final SeasonTables tables;
    private final LoadRequest request;
    private final MixSources sources;
    private final LoadCeiling ceilings;
    private final RigTimes times;
    private final FreshLoad[] byRig;
    private final Extraction extraction;

    public FreshLoads(
            SeasonTables tables, LoadRequest request, MixSources sources, LoadCeiling ceilings, RigTimes times) {
        this.tables = tables;
        this.request = request;
        this.sources = sources;
        this.ceilings = ceilings;
        this.times = times;
        this.extraction = new Extraction(tables.rigs());
        byRig = new FreshLoad[tables.rigs().count()];
        for (int r = 0; r < byRig.length; r++) {
            int alike = firstAlike(r);
            byRig[r] = alike < r ? byRig[alike] : new FreshLoad();
        }
    }

    /**
     * Works them out for the request.
     *
     * @param oneBatch no more than one batch each
     */
    public void workOut(boolean oneBatch) {
        for (int r = 0; r < byRig.length; r++) {
            if (firstAlike(r) == r) {
                workOut(r, byRig[r], oneBatch);
            }
        }
    }

    /** Where compost is fetched, none is like another: each has some of its own on board. */
    private int firstAlike(int rig) {
        return tables.compost().isFetched() ? rig : tables.rigs().firstAlike(rig);
    }

    private void workOut(int rig, FreshLoad load, boolean oneBatch) {
        int planter = request.planter();
        int recipe = request.recipe();
        long ceiling = ceilings.dm2(sources.fresh(rig), rig);
        long dm2 = oneBatch ? ceilings.oneBatch(ceiling, rig) : ceiling;
        load.dm2 = dm2;
        load.waterMl =
                Math.min(tables.recipes().mixMl(dm2, recipe), tables.rigs().nurseMl(rig));
        load.leastMl = tables.recipes().mixMl(Leeway.least(dm2), recipe);
        load.compostMg = tables.recipes().compostMg(dm2, recipe);
        load.chainS = extraction.chainS(rig, load.compostMg);
        load.transferS =
                times.transferS(planter, rig, recipe, tables.loadLimits().loadOf(planter, recipe, dm2));
        load.takenFrom = tables.planters().hours(planter).earliest(request.needS(), load.transferS);
    }

    public FreshLoad of(int rig) {
        return byRig[rig];
    }
}
