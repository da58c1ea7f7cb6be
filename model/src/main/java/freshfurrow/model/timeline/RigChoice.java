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

    @Nullable
    private Quote best;

    private int bestStart;
    private int bestMetres;

    RigChoice(CompiledSeason season, State state, WaterPoints points, CompostLots lots, LoadSizer sizer) {
        this.season = season;
        this.state = state;
        this.sizer = sizer;
        this.quotes = new Quote[season.rigCount()];
        for (int r = 0; r < quotes.length; r++) {
            quotes[r] = new Quote(season, state, points, lots, r);
        }
    }

    /** The quote of the chosen rig, with the source of its mix; null when no rig can bring anything. */
    @Nullable
    Quote choose(int planter, int place, int recipe, int need) {
        for (Quote quote : quotes) {
            quote.request(planter, place, recipe, need);
        }
        best = null;
        bestStart = NEVER;
        int first = nearest();
        consider(quotes[first], false);
        for (Quote quote : quotes) {
            if (quote.rig != first && !hopeless(quote)) {
                consider(quote, false);
            }
        }
        int tomorrow = (need / Calendars.DAY_S + 1) * Calendars.DAY_S;
        if (bestStart >= tomorrow) {
            for (Quote quote : quotes) {
                consider(quote, true);
            }
        }
        return best;
    }

    /** The rig with the shortest way: likely the best, and then the others need no full answer. */
    private int nearest() {
        int nearest = 0;
        for (int r = 1; r < quotes.length; r++) {
            if (quotes[r].shortestWay < quotes[nearest].shortestWay) {
                nearest = r;
            }
        }
        return nearest;
    }

    /** Whether the rig cannot be better than the best so far, whatever the load. */
    private boolean hopeless(Quote quote) {
        Quote leader = best;
        if (leader == null) {
            return false;
        }
        int soonest = quote.soonestStart();
        return soonest > bestStart || (soonest == bestStart && behind(quote.shortestWay, quote.rig, leader));
    }

    private boolean behind(int metres, int rig, Quote leader) {
        return metres > bestMetres || (metres == bestMetres && rig > leader.rig);
    }

    private void consider(Quote quote, boolean oneBatch) {
        quote.source = source(quote);
        long dm2 = sizer.ceiling(quote);
        if (oneBatch) {
            dm2 = Math.min(dm2, season.areaOfCompost(season.batchMg[quote.rig], quote.recipe));
        }
        if (dm2 <= 0) {
            return;
        }
        int start = quote.ask(sizer.loadOf(quote, dm2), dm2);
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
