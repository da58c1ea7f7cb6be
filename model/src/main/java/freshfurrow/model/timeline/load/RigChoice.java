package freshfurrow.model.timeline.load;

import freshfurrow.model.timeline.mix.FreshLoads;
import freshfurrow.model.timeline.mix.LoadCeiling;
import freshfurrow.model.timeline.mix.MixSource;
import freshfurrow.model.timeline.mix.MixSources;
import freshfurrow.model.timeline.mix.Quote;
import freshfurrow.model.timeline.mix.Rank;
import freshfurrow.model.timeline.planters.LoadRequest;
import freshfurrow.model.timeline.rigs.Delivery;
import freshfurrow.model.timeline.rigs.RigTimes;
import freshfurrow.model.timeline.rigs.WaterPoints;
import freshfurrow.model.timeline.state.RigStates;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.tables.LoadLimits;
import freshfurrow.model.timeline.tables.PlanterTable;
import freshfurrow.model.timeline.tables.RigTable;
import freshfurrow.model.timeline.tables.SeasonTables;
import org.jspecify.annotations.Nullable;

/**
 * Which rig serves a request: the one that can start the transfer of the largest load earliest; ties go to less driving, then to
 * the season's order. When none can bring its largest load on the day it is asked for, a load of one batch is asked for as well.
 *
 * <p>Few rigs need give a full answer: they are asked in the order of what each could do at best, up to the first that could not be
 * better than the best answer. What a rig could do at best is reckoned without hoses and hours at first, and with them when its turn
 * comes.
 */
final class RigChoice {
    private final PlanterTable planters;
    private final LoadLimits limits;
    private final RigTable rigs;
    private final RigStates states;
    private final LoadRequest request;
    private final RigTimes times;
    private final WaterPoints points;
    private final MixSources sources;
    private final LoadCeiling ceilings;
    private final FreshLoads fresh;
    private final Quote[] quotes;

    // by rig
    private final long[] dm2;
    /** How many rigs had been asked when {@link #floor} was last reckoned by road; -1 when it was not. */
    private final int[] reckonedAfter;
    /** No rank of the rig's answer can be before this; {@link Rank#OUT} for rigs that are not to be asked any more. */
    private final long[] floor;

    private boolean oneBatch;

    @Nullable
    private Quote best;

    private long bestRank;
    private int bestStart;

    RigChoice(
            SeasonTables tables,
            State state,
            LoadRequest request,
            RigTimes times,
            WaterPoints points,
            MixSources sources,
            LoadCeiling ceilings,
            Quote[] quotes) {
        this.planters = tables.planters();
        this.limits = tables.loadLimits();
        this.rigs = tables.rigs();
        this.states = state.rigs();
        this.request = request;
        this.times = times;
        this.points = points;
        this.sources = sources;
        this.ceilings = ceilings;
        this.fresh = new FreshLoads(tables, request, sources, ceilings, times);
        this.quotes = quotes;
        this.dm2 = new long[quotes.length];
        this.reckonedAfter = new int[quotes.length];
        this.floor = new long[quotes.length];
    }

    /** The quote of the chosen rig, with the source of its mix; null when no rig can bring anything. */
    @Nullable
    Quote choose() {
        best = null;
        bestRank = Rank.OUT;
        points.forget();
        askAll(false);
        if (best == null || bestStart >= request.tomorrowS()) {
            askAll(true);
        }
        return best;
    }

    private void askAll(boolean forOneBatch) {
        oneBatch = forOneBatch;
        if (quotes.length == 1 || planters.isMounted(request.planter())) {
            askOnly(quotes.length == 1 ? quotes[0] : quotes[planters.rig(request.planter())]);
            return;
        }
        fresh.workOut(oneBatch);
        for (int r = 0; r < quotes.length; r++) {
            floor[r] = rankAtBest(r);
            reckonedAfter[r] = -1;
        }
        int asked = 0;
        for (int r = next(); isBetter(floor[r], r); r = next()) {
            if (reckonedAfter[r] == asked) {
                floor[r] = Rank.OUT;
                ask(quotes[r]);
                asked++;
                continue;
            }
            if (reckonedAfter[r] < 0) {
                findSource(quotes[r]);
                findLoad(quotes[r]);
            }
            floor[r] = dm2[r] > 0 ? quotes[r].source().soonest(r, fresh.of(r)) : Rank.OUT;
            reckonedAfter[r] = asked;
        }
    }

    private void askOnly(Quote quote) {
        findSource(quote);
        dm2[quote.rig()] = largest(quote);
        ask(quote);
    }

    private int next() {
        int next = 0;
        for (int r = 1; r < floor.length; r++) {
            if (floor[r] < floor[next]) {
                next = r;
            }
        }
        return next;
    }

    private boolean isBetter(long rank, int rig) {
        Quote leader = best;
        return rank < bestRank || (rank == bestRank && leader != null && rig < leader.rig());
    }

    /** A rank that the rig's answer is not before, told by a road to the planter or by the shortest ways to water. */
    private long rankAtBest(int rig) {
        int need = request.needS();
        return sources.hasMade(rig)
                ? Rank.of(Math.max(need, times.freeS(rig, need)), 0)
                : sources.fresh(rig).atBest(rig, fresh.of(rig));
    }

    private void findLoad(Quote quote) {
        int rig = quote.rig();
        dm2[rig] = quote.source().isFresh() ? fresh.of(rig).dm2() : largest(quote);
    }

    private long largest(Quote quote) {
        long ceiling = ceilings.of(quote);
        return oneBatch ? ceilings.oneBatch(ceiling, quote.rig()) : ceiling;
    }

    private void ask(Quote quote) {
        long mixDm2 = dm2[quote.rig()];
        if (mixDm2 <= 0) {
            return;
        }
        Delivery delivery = quote.start(limits.loadOf(request.planter(), request.recipe(), mixDm2), mixDm2);
        long rank = Rank.of(delivery.transferStart(), delivery.metres());
        if (delivery.isInSeason() && isBetter(rank, quote.rig())) {
            best = quote;
            bestRank = rank;
            bestStart = delivery.transferStart();
        }
    }

    /** Whether age may hold down less what another rig brings: not when it makes a load anew like the first, and comes later. */
    boolean mayBringMore(int rig, Quote first) {
        if (!planters.isServedBy(request.planter(), rig)) {
            return false;
        }
        return rigs.firstAlike(rig) != rigs.firstAlike(first.rig())
                || !first.source().isFresh()
                || sources.hasMade(rig);
    }

    /** The quote of a rig that was not chosen, with the source of its mix. */
    Quote askedAgain(int rig) {
        findSource(quotes[rig]);
        return quotes[rig];
    }

    /** Mix that is made goes before mix made anew, where a load of it can be there before it is too old. */
    private void findSource(Quote quote) {
        int rig = quote.rig();
        if (sources.hasMade(rig)) {
            MixSource made = sources.made(rig);
            quote.begin(made);
            long onBoard = Math.min(ceilings.of(quote), states.mixDm2(rig));
            Delivery delivery = quote.ask(onBoard, onBoard);
            if (delivery.transferStart() < delivery.plantBy()) {
                return;
            }
        }
        quote.begin(sources.fresh(rig));
    }
}
