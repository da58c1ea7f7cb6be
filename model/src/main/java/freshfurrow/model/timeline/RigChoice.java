package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.MIX_DEADLINE;
import static freshfurrow.model.timeline.State.MIX_DM2;
import static freshfurrow.model.timeline.State.MIX_RECIPE;

import org.jspecify.annotations.Nullable;

/**
 * Which rig serves a request: the one that can start the transfer of the largest load earliest; ties go to less driving, then to
 * the season's order. When none can bring its largest load on the day it is asked for, a load of one batch is asked for as well.
 */
final class RigChoice {
    private final CompiledSeason season;
    private final State state;
    private final LoadSizer sizer;
    private final Quote[] quotes;
    private final long[] largestDm2;
    private final long[] smallDm2;

    @Nullable
    private Quote best;

    private int bestStart;
    private int bestMetres;

    RigChoice(CompiledSeason season, State state, WaterPoints points, CompostLots lots, LoadSizer sizer) {
        this.season = season;
        this.state = state;
        this.sizer = sizer;
        this.quotes = new Quote[season.rigCount()];
        this.largestDm2 = new long[quotes.length];
        this.smallDm2 = new long[quotes.length];
        for (int r = 0; r < quotes.length; r++) {
            quotes[r] = new Quote(season, state, points, lots, r);
        }
    }

    /** The quote of the chosen rig, with the source of its mix; null when no rig can bring anything. */
    @Nullable
    Quote choose(int planter, int place, int recipe, int need) {
        best = null;
        bestStart = NEVER;
        for (int r = 0; r < quotes.length; r++) {
            Quote quote = quotes[r];
            quote.request(planter, place, recipe, need);
            quote.source = source(quote);
            largestDm2[r] = sizer.ceiling(quote);
        }
        askAll(largestDm2);
        int tomorrow = (need / Calendars.DAY_S + 1) * Calendars.DAY_S;
        if (bestStart >= tomorrow) {
            for (int r = 0; r < quotes.length; r++) {
                smallDm2[r] = Math.min(largestDm2[r], season.areaOfCompost(season.batchMg[r], recipe));
            }
            askAll(smallDm2);
        }
        return best;
    }

    /** Asks the rigs for these loads, the likely best first: then most others need no full answer. */
    private void askAll(long[] dm2) {
        if (quotes.length == 1) {
            ask(quotes[0], dm2[0]);
            return;
        }
        int first = -1;
        for (int r = 0; r < quotes.length; r++) {
            if (dm2[r] > 0) {
                quotes[r].estimate(sizer.loadOf(quotes[r], dm2[r]), dm2[r]);
                if (first < 0 || likelier(quotes[r], quotes[first])) {
                    first = r;
                }
            }
        }
        if (first < 0) {
            return;
        }
        ask(quotes[first], dm2[first]);
        for (int r = 0; r < quotes.length; r++) {
            if (r != first && dm2[r] > 0 && !hopeless(quotes[r])) {
                ask(quotes[r], dm2[r]);
            }
        }
    }

    private static boolean likelier(Quote quote, Quote other) {
        return quote.soonestStart < other.soonestStart
                || (quote.soonestStart == other.soonestStart && quote.shortestWay < other.shortestWay);
    }

    /** Whether the rig cannot be better than the best so far. */
    private boolean hopeless(Quote quote) {
        Quote leader = best;
        return leader != null
                && (quote.soonestStart > bestStart
                        || (quote.soonestStart == bestStart && behind(quote.shortestWay, quote.rig, leader)));
    }

    private boolean behind(int metres, int rig, Quote leader) {
        return metres > bestMetres || (metres == bestMetres && rig > leader.rig);
    }

    private void ask(Quote quote, long dm2) {
        if (dm2 <= 0) {
            return;
        }
        int start = quote.start(sizer.loadOf(quote, dm2), dm2);
        Quote leader = best;
        if (start < NEVER
                && (leader == null
                        || start < bestStart
                        || (start == bestStart && !behind(quote.metres, quote.rig, leader)))) {
            best = quote;
            bestStart = start;
            bestMetres = quote.metres;
        }
    }

    private Quote.Source source(Quote quote) {
        int base = state.rig(quote.rig);
        if (isWorthAFill(quote.rig) && state.v[base + MIX_RECIPE] == quote.recipe) {
            quote.source = season.extractsAtWater[quote.rig] ? Quote.Source.ON_BOARD : Quote.Source.BEGUN;
            long onBoard = Math.min(sizer.ceiling(quote), state.v[base + MIX_DM2]);
            if (quote.ask(onBoard, onBoard) < quote.deadline) {
                return quote.source;
            }
        }
        return fresh(season, quote.rig);
    }

    /** Whether a rig has mix of the recipe that is not too old when it is asked for, so that no compost is needed. */
    boolean hasMix(int recipe, int need) {
        for (int r = 0; r < quotes.length; r++) {
            int base = state.rig(r);
            if (isWorthAFill(r) && state.v[base + MIX_RECIPE] == recipe && state.v[base + MIX_DEADLINE] > need) {
                return true;
            }
        }
        return false;
    }

    /** A remainder that rounding leaves beside a field is none. */
    private boolean isWorthAFill(int rig) {
        long mix = state.v[state.rig(rig) + MIX_DM2];
        return season.extractsAtWater[rig] ? mix > 0 : mix >= LoadSizer.CRUMB_DM2;
    }

    /** Where a rig makes mix anew. */
    static Quote.Source fresh(CompiledSeason season, int rig) {
        return season.extractsAtWater[rig] ? Quote.Source.AT_WATER : Quote.Source.BESIDE_PLANTER;
    }
}
