package freshfurrow.model.timeline.load;

import static freshfurrow.model.quantity.Factors.MINUTE_S;

import freshfurrow.model.season.Goals;
import freshfurrow.model.timeline.mix.MixSources;
import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.planters.Walk;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;
import org.jspecify.annotations.Nullable;

/**
 * Which rig brings how much for a request. It is the rig that {@link RigChoice} finds, unless age holds down what that one brings
 * and another gets the planter on faster: more area of a load by the minutes that waiting, the fill, its transfer and planting take,
 * where waiting and the fill count what they weigh.
 */
final class LoadChoice {
    private final PlanterTable planters;
    private final Goals goals;
    private final LoadRequest request;
    private final RigChoice rigChoice;
    private final MixSources sources;
    private final LoadSizer sizer;
    private final Walk walk;
    private final int rigs;

    LoadChoice(
            SeasonTables tables,
            LoadRequest request,
            RigChoice rigChoice,
            MixSources sources,
            LoadSizer sizer,
            Walk walk) {
        this.planters = tables.planters();
        this.goals = tables.season().goals();
        this.request = request;
        this.rigChoice = rigChoice;
        this.sources = sources;
        this.sizer = sizer;
        this.walk = walk;
        this.rigs = tables.rigs().count();
    }

    /**
     * The quote of the rig that brings the load, with its delivery; null when no load is worth bringing.
     *
     * @param first of the rig that can come first
     * @param standing the planter stands in the field, where a load has to be worth its transfer
     */
    @Nullable
    Quote choose(Quote first, boolean standing) {
        walk.forget();
        Delivery load = size(first, standing);
        if (load != null && (rigs == 1 || !load.isHeldDownByAge())) {
            return first;
        }
        Quote best = load == null ? null : first;
        for (int rig = 0; rig < rigs; rig++) {
            if (rig == first.rig() || !rigChoice.mayBringMore(rig, first)) {
                continue;
            }
            Quote quote = rigChoice.askedAgain(rig);
            Delivery other = size(quote, standing);
            if (other != null && (load == null || isFaster(other, load))) {
                best = quote;
                load = other;
            }
        }
        return best;
    }

    /** Made anew where mix on board is not worth a fill. */
    @Nullable
    private Delivery size(Quote quote, boolean standing) {
        if (quote.source().isFresh()) {
            return sizer.size(quote, standing);
        }
        Delivery made = sizer.size(quote, true);
        if (made != null) {
            return made;
        }
        quote.from(sources.fresh(quote.rig()));
        return sizer.size(quote, standing);
    }

    private boolean isFaster(Delivery one, Delivery other) {
        return one.loadDm2() * takesMin(other) > other.loadDm2() * takesMin(one);
    }

    /** Waiting and the fill by what they weigh, and the transfer and planting of all of the load without breaks, min. */
    private double takesMin(Delivery delivery) {
        int planter = request.planter();
        int waitS = planters.hours(planter).work(request.needS(), delivery.transferStart());
        double plantingS = delivery.loadDm2() / planters.capacityDm2PerS(planter);
        return goals.refillMin() + (waitS * goals.waitMinPerMin() + delivery.transferS() + plantingS) / MINUTE_S;
    }
}
