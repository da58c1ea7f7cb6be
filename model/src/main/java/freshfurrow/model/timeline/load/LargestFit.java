package freshfurrow.model.timeline.load;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.tables.PlanterTable;

/**
 * Searches the largest load of one rig of which all is planted in time, where the size itself decides when the load comes and how old its batches
 * are. What a size would let be planted only shrinks as the size grows, so a size that fits is followed by none larger than what it would
 * let be planted.
 */
final class LargestFit {
    /** The search ends this share of a tank below the true size, never above it. */
    static final int TOLERANCE_SHARE = 256;

    private static final int MOST_STEPS = 40;

    private final LoadRequest request;
    private final PlanterTable planters;
    private final TrialPlanting trial;
    private final Quote quote;
    /** Of single sizes, of which nobody asks what held them down. */
    private final Fit single = new Fit();

    // among which sizes
    private long ceiling;
    private long smallest;
    private int lastStart = NEVER;

    LargestFit(PlanterTable planters, LoadRequest request, TrialPlanting trial, Quote quote) {
        this.planters = planters;
        this.request = request;
        this.trial = trial;
        this.quote = quote;
    }

    /** The sizes that are searched from now on: up to {@code ceilingDm2}, and none below {@code smallestDm2}. */
    void among(long smallestDm2, long ceilingDm2) {
        smallest = smallestDm2;
        ceiling = ceilingDm2;
        lastStart = NEVER;
    }

    /** Sizes whose transfer begins at this time or later do not count, s. */
    void before(int s) {
        lastStart = s;
    }

    void whenever() {
        lastStart = NEVER;
    }

    /** Whether all of a mix of that area would be planted in time. */
    boolean fits(long dm2) {
        return plantedOf(dm2, dm2, single) >= dm2;
    }

    /** Whether so much of a mix of that area would be, were there more to plant. */
    boolean fitsAtLeast(long dm2) {
        return plantedOf(dm2, ceiling, single) >= dm2;
    }

    private long plantedOf(long dm2, long cap, Fit fit) {
        return trial.dm2(quote, dm2, cap, lastStart, fit);
    }

    /** Leaves the fit at the largest size. */
    void find(Fit fit) {
        fit.begin();
        long tooLarge = ceiling;
        long atTooLarge = plantedOf(tooLarge, ceiling, fit);
        if (atTooLarge >= ceiling) {
            fit.is(ceiling);
            return;
        }
        long fits = smaller(tooLarge, atTooLarge);
        long atFits = 0;
        for (int step = 0; fits > 0; step++) {
            atFits = plantedOf(fits, ceiling, fit);
            if (atFits >= fits) {
                break;
            }
            tooLarge = fits;
            atTooLarge = atFits;
            fits = step < MOST_STEPS ? smaller(tooLarge, atTooLarge) : 0;
        }
        long tolerance = Math.max(1, planters.tankDm2(request.planter(), request.recipe()) / TOLERANCE_SHARE);
        long bound = Math.min(tooLarge, atFits);
        for (int step = 1; fits > 0 && bound - fits > tolerance && step < MOST_STEPS; step++) {
            long middle = fits + (bound - fits) / 2;
            if (step % 3 != 0) {
                double excess = atFits - fits;
                double lack = tooLarge - atTooLarge;
                long crossing = fits + (long) ((tooLarge - fits) * excess / (excess + lack)) - tolerance / 4;
                middle = Math.max(fits + 1, Math.min(bound, crossing));
            }
            long atMiddle = plantedOf(middle, ceiling, fit);
            if (atMiddle >= middle) {
                fits = middle;
                atFits = atMiddle;
                bound = Math.min(bound, atFits);
            } else {
                tooLarge = middle;
                atTooLarge = atMiddle;
                bound = Math.min(bound, middle);
            }
        }
        fit.isHeldDownAt(fits);
    }

    /** The next size to try after one of which only {@code planted} would be in time: half of it when that is nothing. */
    private long smaller(long size, long planted) {
        long smaller = Math.max(planted > 0 ? planted : size / 2, smallest);
        return smaller < size ? smaller : 0;
    }
}
