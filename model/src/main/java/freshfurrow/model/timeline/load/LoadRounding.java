package freshfurrow.model.timeline.load;

import static freshfurrow.model.timeline.tables.Leeway.CRUMB_DM2;

import freshfurrow.model.season.Goals;
import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.planters.FieldRun;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.state.CompostLots;
import freshfurrow.model.timeline.tables.Leeway;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.RecipeTable;
import freshfurrow.model.timeline.tables.SeasonTables;

/** Sizes that use up whole tanks and leave no crumbs of fields, next to the largest that fits. */
final class LoadRounding {
    private final RecipeTable recipes;
    private final PlanterTable planters;
    private final Goals goals;
    private final LoadRequest request;
    private final CompostLots lots;
    private final FieldRun run;

    LoadRounding(SeasonTables tables, LoadRequest request, CompostLots lots, FieldRun run) {
        this.recipes = tables.recipes();
        this.planters = tables.planters();
        this.goals = tables.season().goals();
        this.request = request;
        this.lots = lots;
        this.run = run;
    }

    /**
     * A size next to the one given that is of more use, if it fits as well, dm2: one that ends with a field, does not begin another for
     * next to nothing, or does not leave so little of one that it might take a fill of its own for nothing.
     */
    long rounded(Quote quote, LargestFit fits, long dm2, long ceiling) {
        long size = dm2;
        if (quote.source().servesSeveralFills()) {
            long tanks = withoutRest(quote.rig(), size);
            if (tanks < size && fits.fits(tanks)) {
                size = tanks;
            }
        }
        long end = run.endDm2(size);
        if (end > size
                && end <= Leeway.most(ceiling)
                && end - size <= tank() / LargestFit.TOLERANCE_SHARE + CRUMB_DM2
                && fits.fits(end)) {
            return end;
        }
        long begin = run.beginDm2(size);
        if (begin > 0 && size - begin < CRUMB_DM2 && size > begin && fits.fits(begin)) {
            return begin;
        }
        boolean leavesCrumb = end > size && end - size < CRUMB_DM2;
        long trimmed = size - CRUMB_DM2;
        return leavesCrumb && trimmed > CRUMB_DM2 && fits.fits(trimmed) ? trimmed : size;
    }

    /**
     * A mix for whole tanks only, unless it is the last of a run of fields: where what is then left of the run takes one fill, and
     * where the part of a fill that the rest would not use weighs more than the share of a water trip that the rest saves.
     */
    private long withoutRest(int rig, long size) {
        long tank = tank();
        long rest = size % tank;
        long whole = size - rest;
        if (size <= Leeway.most(whole) || whole == 0) {
            return size;
        }
        long compostDm2 = recipes.areaOfCompost(lots.leftMg(rig), request.recipe());
        long left = Math.min(run.dm2(whole + tank + 1), compostDm2);
        if (left <= Leeway.most(size)) {
            return size;
        }
        double unusedFill = goals.refillMin() * (tank - rest) / tank;
        double shareOfTrip = goals.waterTripMin() * rest / size;
        return left <= whole + tank || unusedFill > shareOfTrip ? whole : size;
    }

    private long tank() {
        return planters.tankDm2(request.planter(), request.recipe());
    }
}
