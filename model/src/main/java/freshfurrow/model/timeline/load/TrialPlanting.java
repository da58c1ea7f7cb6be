package freshfurrow.model.timeline.load;

import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.planters.Walk;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.Extraction;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.state.CompostLots;
import freshfurrow.model.timeline.tables.LoadLimits;
import freshfurrow.model.timeline.tables.RecipeTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** How much of a mix would be in the ground before the hold time of its oldest batch is over. */
final class TrialPlanting {
    private final LoadRequest request;
    private final LoadLimits limits;
    private final RecipeTable recipes;
    private final RigTimes times;
    private final CompostLots lots;
    private final Walk walk;

    TrialPlanting(SeasonTables tables, LoadRequest request, RigTimes times, CompostLots lots, Walk walk) {
        this.limits = tables.loadLimits();
        this.recipes = tables.recipes();
        this.request = request;
        this.times = times;
        this.lots = lots;
        this.walk = walk;
    }

    /**
     * Area, up to the cap, that would be in the ground in time if the mix were made for {@code mixDm2}; less than that when there
     * is not the compost for it, or when its transfer begins at {@code lastStart} or later.
     *
     * @param fit is told what stands against the size
     */
    long dm2(Quote quote, long mixDm2, long capDm2, int lastStart, Fit fit) {
        if (mixDm2 <= 0) {
            return 0;
        }
        Delivery delivery = quote.ask(loadOf(mixDm2), mixDm2);
        if (delivery.transferStart() >= lastStart) {
            return 0;
        }
        Extraction extraction = delivery.extraction();
        if (extraction.batches() > 0) {
            if (delivery.isAcrossBreak()) {
                fit.liesAcrossBreak();
            }
            long there = lots.thereMg(
                    delivery.rig(), extraction.start(), delivery.compost().mg());
            if (!CompostLots.isEnough(there, extraction.compostMg())) {
                fit.compostFallsShort();
                long extractedDm2 = quote.source().extractedDm2(quote.rig());
                return Math.min(mixDm2 - 1, extractedDm2 + recipes.areaOfCompost(there, request.recipe()));
            }
        }
        walk.begin(request.planter(), request.place(), delivery.transferEnd());
        return quote.source().servesSeveralFills()
                ? inFills(delivery, mixDm2, capDm2)
                : walk.plant(request.planter(), request.recipe(), capDm2, delivery.plantBy());
    }

    /** The same of a mix for several fills; its last may be larger, and more may follow, as if there were more of the mix. */
    private long inFills(Delivery delivery, long mixDm2, long capDm2) {
        int planter = request.planter();
        int recipe = request.recipe();
        int rig = delivery.rig();
        int plantBy = delivery.plantBy();
        long filled = most(mixDm2, capDm2);
        long done = walk.plant(planter, recipe, filled, plantBy);
        int rigFree = delivery.transferEnd();
        int rigPlace = request.place();
        while (done >= filled && done < capDm2) {
            boolean ofMix = done < mixDm2;
            int duration = times.transferS(planter, rig, recipe, loadOf((ofMix ? mixDm2 : capDm2) - done));
            int ready = times.arrival(rig, rigPlace, walk.place(), rigFree);
            int start = times.fitTransfer(planter, rig, Math.max(ready, walk.timeS()), duration);
            rigFree = start + duration;
            if (rigFree >= plantBy) {
                break;
            }
            walk.goOnAt(rigFree);
            rigPlace = walk.place();
            long most = most(ofMix ? mixDm2 - done : 0, capDm2 - done);
            long more = walk.plant(planter, recipe, most, plantBy);
            if (more == 0) {
                break;
            }
            done += more;
            filled += most;
        }
        return done;
    }

    /** What is planted at the most after a fill out of what is left of a mix: the last fill might be larger. */
    private long most(long leftOfMixDm2, long leftOfCapDm2) {
        long load = loadOf(leftOfMixDm2);
        return load < leftOfMixDm2 ? load : loadOf(leftOfCapDm2);
    }

    private long loadOf(long mixDm2) {
        return limits.loadOf(request.planter(), request.recipe(), mixDm2);
    }
}
