package freshfurrow.model.timeline.load;

import static freshfurrow.model.timeline.tables.Leeway.CRUMB_DM2;

import freshfurrow.model.timeline.mix.LoadCeiling;
import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.tables.LoadLimits;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.SeasonTables;
import org.jspecify.annotations.Nullable;

/** How much one rig should bring: the {@link LargestFit}, rather today than tomorrow, rounded to what is of use. */
final class LoadSizer {
    /** A quarter. */
    private static final int GOOD_PART = 4;

    private final LoadLimits limits;
    private final RigTimes times;
    private final PlanterTable planters;
    private final LoadRequest request;
    private final LoadCeiling ceilings;
    private final LoadRounding rounding;
    private final SmallLoad smallLoad;
    private final LargestFit[] fitsByRig;

    private final Fit large = new Fit();
    private final Fit afterBreak = new Fit();
    private final Fit today = new Fit();

    LoadSizer(
            SeasonTables tables,
            LoadRequest request,
            RigTimes times,
            LoadCeiling ceilings,
            LoadRounding rounding,
            TrialPlanting trial,
            SmallLoad smallLoad,
            Quote[] quotes) {
        this.limits = tables.loadLimits();
        this.planters = tables.planters();
        this.request = request;
        this.times = times;
        this.ceilings = ceilings;
        this.rounding = rounding;
        this.smallLoad = smallLoad;
        fitsByRig = new LargestFit[quotes.length];
        for (int r = 0; r < quotes.length; r++) {
            fitsByRig[r] = new LargestFit(planters, request, trial, quotes[r]);
        }
    }

    /**
     * The delivery of the load that the rig of the quote should bring out of the quote's source; null when nothing of one could be
     * planted in time.
     *
     * @param onlyWorthwhile null as well for a load that age holds down so far that it would be gone sooner than its own transfer
     *     takes
     */
    @Nullable
    Delivery size(Quote quote, boolean onlyWorthwhile) {
        LargestFit fits = fitsByRig[quote.rig()];
        int planter = request.planter();
        long setupDm2 = onlyWorthwhile ? (long) (planters.fillSetupS(planter) * planters.capacityDm2PerS(planter)) : 0;
        long smallest = Math.max(CRUMB_DM2, setupDm2);
        long ceiling = ceilings.of(quote);
        fits.among(smallest, ceiling);
        Fit fit = aroundBreaks(quote, fits, ceiling);
        if (fit.dm2() > 0 && ask(quote, fit.dm2()).transferStart() >= request.tomorrowS()) {
            fit = todayRather(quote, fits, fit, smallest);
        }
        if (fit.dm2() == 0 || (onlyWorthwhile && fit.isHeldDownByAge() && !isWorthwhile(quote.rig(), fit.dm2()))) {
            return null;
        }
        Delivery delivery = ask(quote, rounding.rounded(quote, fits, fit.dm2(), ceiling));
        delivery.heldDownByAge(fit.isHeldDownByAge());
        return smallLoad.isTooSmall(quote.source(), delivery) ? null : delivery;
    }

    private Delivery ask(Quote quote, long mixDm2) {
        return quote.ask(loadOf(mixDm2), mixDm2);
    }

    private Fit aroundBreaks(Quote quote, LargestFit fits, long ceiling) {
        quote.together(false);
        fits.find(large);
        if (large.dm2() < ceiling && large.isAcrossBreak()) {
            quote.together(true);
            fits.find(afterBreak);
            if (afterBreak.dm2() > large.dm2()) {
                return afterBreak;
            }
            quote.together(false);
        }
        return large;
    }

    /**
     * Where the largest size comes on a later day only: the largest that can come today, if that is worthwhile and a good part of
     * it, so that no planter stands still for a day over the last few litres.
     */
    private Fit todayRather(Quote quote, LargestFit fits, Fit later, long smallest) {
        boolean together = quote.isTogether();
        long goodPart = Math.max(later.dm2() / GOOD_PART, smallest);
        quote.together(false);
        fits.before(request.tomorrowS());
        boolean found = fits.fitsAtLeast(goodPart);
        if (found) {
            fits.find(today);
            found = today.dm2() >= goodPart && isWorthwhile(quote.rig(), today.dm2());
        }
        fits.whenever();
        if (found) {
            return today;
        }
        quote.together(together);
        return later;
    }

    /** Whether planting the load takes as long as its own transfer. */
    private boolean isWorthwhile(int rig, long mixDm2) {
        int planter = request.planter();
        long loadDm2 = loadOf(mixDm2);
        int transferS = times.transferS(planter, rig, request.recipe(), loadDm2);
        return loadDm2 >= transferS * planters.capacityDm2PerS(planter);
    }

    private long loadOf(long mixDm2) {
        return limits.loadOf(request.planter(), request.recipe(), mixDm2);
    }
}
