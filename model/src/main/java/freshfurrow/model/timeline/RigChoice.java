package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.MIX_DEADLINE;
import static freshfurrow.model.timeline.State.MIX_DM2;
import static freshfurrow.model.timeline.State.MIX_RECIPE;
import static freshfurrow.model.timeline.State.RIG_PLACE;
import static freshfurrow.model.timeline.State.WATER_ML;

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
    /** After all ranks. */
    private static final long OUT = Long.MAX_VALUE;

    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private final WaterPoints points;
    private final LoadSizer sizer;
    private final Quote[] quotes;

    // by rig
    private final AnewLoad[] anewLoads;
    private final long[] dm2;
    /** How many rigs had been asked when {@link #floor} was last reckoned by road; -1 when it was not. */
    private final int[] reckonedAfter;
    /** No rank of the rig's answer can be before this; {@link #OUT} for rigs that are not to be asked any more. */
    private final long[] floor;

    // the request
    private int planter;
    private int place;
    private int recipe;
    private int need;
    private boolean oneBatch;

    @Nullable
    private Quote best;

    private long bestRank;

    RigChoice(CompiledSeason season, State state, WaterPoints points, CompostLots lots, LoadSizer sizer) {
        this.season = season;
        this.state = state;
        this.v = state.v;
        this.points = points;
        this.sizer = sizer;
        int rigs = season.rigs.count();
        this.quotes = new Quote[rigs];
        this.anewLoads = new AnewLoad[rigs];
        for (int r = 0; r < rigs; r++) {
            quotes[r] = new Quote(season, state, points, lots, r);
            int alike = season.rigs.firstAlike(r);
            anewLoads[r] = alike < r
                    ? anewLoads[alike]
                    : new AnewLoad(season, sizer, new Quote(season, state, points, lots, r));
        }
        this.dm2 = new long[rigs];
        this.reckonedAfter = new int[rigs];
        this.floor = new long[rigs];
    }

    /** The quote of the chosen rig, with the source of its mix; null when no rig can bring anything. */
    @Nullable
    Quote choose(int planterIndex, int placeIndex, int recipeIndex, int needS) {
        planter = planterIndex;
        place = placeIndex;
        recipe = recipeIndex;
        need = needS;
        best = null;
        bestRank = OUT;
        points.forget();
        askAll(false);
        int tomorrow = (need / Calendars.DAY_S + 1) * Calendars.DAY_S;
        Quote whole = best;
        if (whole == null || whole.transferStart >= tomorrow) {
            askAll(true);
        }
        return best;
    }

    private void askAll(boolean forOneBatch) {
        oneBatch = forOneBatch;
        if (quotes.length == 1) {
            Quote only = quotes[0];
            only.request(planter, place, recipe, need);
            only.source = source(only);
            dm2[0] = sizer.ceiling(only, oneBatch);
            ask(only);
            return;
        }
        for (int r = 0; r < quotes.length; r++) {
            if (season.rigs.firstAlike(r) == r) {
                anewLoads[r].workOut(planter, place, recipe, need, oneBatch);
            }
            floor[r] = rankAtBest(r);
            reckonedAfter[r] = -1;
        }
        int asked = 0;
        for (int r = next(); isBetter(floor[r], r); r = next()) {
            if (reckonedAfter[r] == asked) {
                floor[r] = OUT;
                ask(quotes[r]);
                asked++;
                continue;
            }
            if (reckonedAfter[r] < 0) {
                quotes[r].request(planter, place, recipe, need);
                findLoad(quotes[r]);
            }
            floor[r] = dm2[r] > 0 ? rankByRoad(quotes[r]) : OUT;
            reckonedAfter[r] = asked;
        }
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
        return rank < bestRank || (rank == bestRank && leader != null && rig < leader.rig);
    }

    /** Earlier starts come first, of equal ones those with less driving. */
    private static long rank(int start, int metres) {
        return (long) start << Integer.SIZE | metres;
    }

    /** A rank that the rig's answer is not before, told by a road to the planter or by the shortest ways to water. */
    private long rankAtBest(int rig) {
        AnewLoad load = anewLoads[rig];
        if (mayUseMix(rig)) {
            return rank(Math.max(need, quotes[rig].free(need)), 0);
        }
        if (load.dm2 == 0) {
            return OUT;
        }
        long lackMl = lackMl(load, rig);
        int from = place(rig);
        int way = lackMl > 0
                ? season.water.metresToWater(from) + season.water.metresToWater(place)
                : season.places.metres(from, place);
        int drawS = lackMl > 0 ? season.water.leastDrawS(lackMl) : 0;
        return rank(Math.max(load.takenFrom, quotes[rig].free(need) + load.chainS + drawS + driveS(way, rig)), way);
    }

    /** A rank that the rig's answer is not before, and is equal to but for rounding, breaks of the rig and queues. */
    private long rankByRoad(Quote quote) {
        int rig = quote.rig;
        int from = place(rig);
        int free = quote.free(need);
        if (quote.source == Quote.Source.BEGUN) {
            int way = Math.min(season.places.metres(from, place), season.water.metresByWater(from, place));
            return rank(Math.max(need, free + driveS(way, rig)), way);
        }
        if (quote.source == Quote.Source.ON_BOARD) {
            int way = season.places.metres(from, place);
            return rank(Math.max(need, free + driveS(way, rig)), way);
        }
        AnewLoad load = anewLoads[rig];
        long lackMl = lackMl(load, rig);
        int there = NEVER;
        int way = NEVER;
        if (lackMl <= 0) {
            way = season.places.metres(from, place);
            there = free + driveS(way, rig);
        } else {
            long roomMl = season.rigs.extractsAtWater(rig)
                    ? load.waterMl
                    : season.rigs.nurseMl(rig) - v[state.rig(rig) + WATER_ML];
            for (int point = 0; point < season.water.count(); point++) {
                int at = season.water.place(point);
                int to = season.places.metres(from, at);
                int onward = season.places.metres(at, place);
                int draw = points.soonestDraw(point, free + driveS(to, rig), lackMl, roomMl, season.rigs.hours(rig));
                there = Math.min(there, draw + points.shortestDrawS(point, lackMl, roomMl) + driveS(onward, rig));
                way = Math.min(way, to + onward);
            }
        }
        int ready = Math.max(need, there + load.chainS);
        return rank(season.planters.hours(planter).earliest(ready, load.transferS), way);
    }

    private int place(int rig) {
        return (int) v[state.rig(rig) + RIG_PLACE];
    }

    /** Rounded down, unlike the drives of a quote, which may be in two parts. */
    private int driveS(int metres, int rig) {
        return season.rigs.leastDriveS(rig, metres);
    }

    private long lackMl(AnewLoad load, int rig) {
        return load.leastMl - (season.rigs.extractsAtWater(rig) ? 0 : v[state.rig(rig) + WATER_ML]);
    }

    /** Finds the source of the rig's mix and the largest load out of it. */
    private void findLoad(Quote quote) {
        quote.source = source(quote);
        boolean isAnew = quote.source == anew(season, quote.rig);
        dm2[quote.rig] = isAnew ? anewLoads[quote.rig].dm2 : sizer.ceiling(quote, oneBatch);
    }

    private void ask(Quote quote) {
        long mixDm2 = dm2[quote.rig];
        if (mixDm2 <= 0) {
            return;
        }
        int start = quote.start(sizer.loadOf(quote, mixDm2), mixDm2);
        long rank = rank(start, quote.metres);
        if (start < NEVER && isBetter(rank, quote.rig)) {
            best = quote;
            bestRank = rank;
        }
    }

    /** Whether age may hold down less what another rig brings: not when it makes a load anew like the first, and comes later. */
    boolean mayBringMore(int rig, Quote first) {
        return season.rigs.firstAlike(rig) != season.rigs.firstAlike(first.rig)
                || first.source != anew(season, first.rig)
                || mayUseMix(rig);
    }

    /** The quote of a rig that was not chosen, with the source of its mix. */
    Quote askedAgain(int rig, int planterIndex, int placeIndex, int recipeIndex, int needS) {
        Quote quote = quotes[rig];
        quote.request(planterIndex, placeIndex, recipeIndex, needS);
        quote.source = source(quote);
        return quote;
    }

    private Quote.Source source(Quote quote) {
        if (mayUseMix(quote.rig)) {
            quote.source = season.rigs.extractsAtWater(quote.rig) ? Quote.Source.ON_BOARD : Quote.Source.BEGUN;
            long onBoard = Math.min(sizer.ceiling(quote), v[state.rig(quote.rig) + MIX_DM2]);
            if (quote.ask(onBoard, onBoard) < quote.deadline) {
                return quote.source;
            }
        }
        return anew(season, quote.rig);
    }

    /** Whether a rig has mix of the recipe that is not too old when it is asked for, so that no compost is needed. */
    boolean hasMix(int wanted, int when) {
        for (int r = 0; r < quotes.length; r++) {
            int base = state.rig(r);
            if (isWorthAFill(r) && v[base + MIX_RECIPE] == wanted && v[base + MIX_DEADLINE] > when) {
                return true;
            }
        }
        return false;
    }

    private boolean mayUseMix(int rig) {
        return isWorthAFill(rig) && v[state.rig(rig) + MIX_RECIPE] == recipe;
    }

    /** A remainder that rounding leaves is none. */
    private boolean isWorthAFill(int rig) {
        return v[state.rig(rig) + MIX_DM2] >= LoadSizer.CRUMB_DM2;
    }

    /** Where a rig makes mix anew. */
    static Quote.Source anew(CompiledSeason season, int rig) {
        return season.rigs.extractsAtWater(rig) ? Quote.Source.AT_WATER : Quote.Source.BESIDE_PLANTER;
    }
}
