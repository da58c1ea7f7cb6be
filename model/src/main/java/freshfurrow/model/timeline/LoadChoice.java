package freshfurrow.model.timeline;

import org.jspecify.annotations.Nullable;

/**
 * Which rig brings how much for a request. It is the rig that {@link RigChoice} finds, unless age holds down what that one brings
 * and another gets the planter on faster: more area of a load by the minutes that waiting, the fill, its transfer and planting take,
 * where waiting and the fill count what they weigh.
 */
final class LoadChoice {
    private final CompiledSeason season;
    private final RigChoice rigChoice;
    private final LoadSizer sizer;
    private final Planting planting;

    /** Area of the mix of which the load that was chosen last is a part or all, dm2; 0 when no load is worth bringing. */
    long mixDm2;

    LoadChoice(CompiledSeason season, RigChoice rigChoice, LoadSizer sizer, Planting planting) {
        this.season = season;
        this.rigChoice = rigChoice;
        this.sizer = sizer;
        this.planting = planting;
    }

    /**
     * The quote of the chosen rig, left at the load it brings; null when no rig can bring anything.
     *
     * @param standing the planter stands in the field, where a load has to be worth its transfer
     */
    @Nullable
    Quote choose(int planter, int place, int recipe, int need, boolean standing) {
        Quote first = rigChoice.choose(planter, place, recipe, need);
        if (first == null) {
            return null;
        }
        planting.forget();
        mixDm2 = size(first, standing);
        if (season.rigs.count() == 1 || (mixDm2 > 0 && !sizer.isHeldDownByAge())) {
            return first;
        }
        Quote best = first;
        for (int rig = 0; rig < season.rigs.count(); rig++) {
            if (rig == first.rig || !rigChoice.mayBringMore(rig, first)) {
                continue;
            }
            Quote quote = rigChoice.askedAgain(rig, planter, place, recipe, need);
            long size = size(quote, standing);
            if (size > 0 && (mixDm2 == 0 || isFaster(quote, size, best, mixDm2))) {
                best = quote;
                mixDm2 = size;
            }
        }
        return best;
    }

    /** Leaves the quote at the size it returns, made anew where mix on board is not worth a fill. */
    private long size(Quote quote, boolean standing) {
        boolean made = quote.source == Quote.Source.ON_BOARD || quote.source == Quote.Source.BEGUN;
        long size = sizer.size(quote, standing || made);
        if (made && size == 0) {
            quote.source = RigChoice.anew(season, quote.rig);
            size = sizer.size(quote, standing);
        }
        return size;
    }

    private boolean isFaster(Quote quote, long quoteMixDm2, Quote other, long otherMixDm2) {
        long load = sizer.loadOf(quote, quoteMixDm2);
        long otherLoad = sizer.loadOf(other, otherMixDm2);
        return load * takesMin(other, otherLoad) > otherLoad * takesMin(quote, load);
    }

    /** Waiting and the fill by what they weigh, and the transfer and planting of all of the load without breaks, min. */
    private double takesMin(Quote quote, long loadDm2) {
        int waitS = season.planters.hours(quote.planter).work(quote.need, quote.transferStart);
        double plantingS = loadDm2 / season.planters.capacityDm2PerS(quote.planter);
        return season.goals.refillMin() + (waitS * season.goals.waitMinPerMin() + quote.transferS + plantingS) / 60;
    }
}
