package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.AWAITS_COMPOST;
import static freshfurrow.model.timeline.State.FILL_DAY;
import static freshfurrow.model.timeline.State.FRESH;
import static freshfurrow.model.timeline.State.INDEX;
import static freshfurrow.model.timeline.State.LEFT_DM2;
import static freshfurrow.model.timeline.State.MISPLACED_FIELDS;
import static freshfurrow.model.timeline.State.MIX_DM2;
import static freshfurrow.model.timeline.State.MIX_RECIPE;
import static freshfurrow.model.timeline.State.NEED;
import static freshfurrow.model.timeline.State.PLACE;
import static freshfurrow.model.timeline.State.POSTPONED;
import static freshfurrow.model.timeline.State.TIME;
import static freshfurrow.model.timeline.State.UNSERVED_DM2;
import static freshfurrow.model.timeline.State.WAIT_FROM;

import freshfurrow.model.goals.Counters;
import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.plan.WaitReason;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A season played out for given lists of fields: the one computation behind every figure. {@link #run} may be called any number
 * of times and allocates nothing; the counters tell of the last run. Not for use by several threads at once.
 */
public final class Timeline implements Counters {
    /** So many planting periods in a row without a load that could be used up in time: it is the hold time, not the season's end. */
    private static final int HOPELESS = 3;

    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private final Planting planting;
    private final CompostLots lots;
    private final Quote quote;
    private final LoadSizer sizer;
    private final RigWork rigWork;
    private final int[][] lists;
    private final int[] sizes;
    private final boolean[] listed;
    private final GoalSet goals;
    private @Nullable Journal journal;

    public Timeline(CompiledSeason season) {
        this.season = season;
        state = new State(season);
        v = state.v;
        planting = new Planting(season, state);
        lots = new CompostLots(season, state);
        WaterPoints points = new WaterPoints(season, state);
        quote = new Quote(season, state, points, lots);
        sizer = new LoadSizer(season, state, quote, lots, planting);
        rigWork = new RigWork(season, state, points, lots);
        lists = new int[season.planterCount()][season.fieldCount()];
        sizes = new int[season.planterCount()];
        listed = new boolean[season.fieldCount()];
        goals = GoalSet.of(season.season());
        planting.lists(lists, sizes);
    }

    /**
     * Plays the season out.
     *
     * @param fieldLists for each planter, indices of fields in its order; a field stands in one list at most
     * @param listSizes how many entries of each list count
     */
    public void run(int[][] fieldLists, int[] listSizes) {
        play(fieldLists, listSizes, null);
    }

    void play(int[][] fieldLists, int[] listSizes, @Nullable Journal journalOrNull) {
        journal = journalOrNull;
        state.reset();
        takeLists(fieldLists, listSizes);
        for (int p = 0; p < sizes.length; p++) {
            if (sizes[p] > 0) {
                v[state.planter(p) + LEFT_DM2] = season.areaDm2[lists[p][0]];
            }
            askAfresh(p, -1, -1);
        }
        for (int p = next(); p >= 0; p = next()) {
            serve(p);
        }
        for (int r = 0; r < season.rigCount(); r++) {
            rigWork.dumpLeftover(r, journal);
        }
    }

    /** Copies the lists, passing over fields that the planter may not plant. */
    private void takeLists(int[][] fieldLists, int[] listSizes) {
        Arrays.fill(listed, false);
        for (int p = 0; p < sizes.length; p++) {
            sizes[p] = 0;
            for (int i = 0; i < listSizes[p]; i++) {
                int field = fieldLists[p][i];
                listed[field] = true;
                if (season.allows(p, field)) {
                    lists[p][sizes[p]++] = field;
                } else {
                    state.add(MISPLACED_FIELDS, 1);
                    unserved(field, season.areaDm2[field], Shortfall.NOT_ALLOWED, 0);
                }
            }
        }
        for (int field = 0; field < listed.length; field++) {
            if (!listed[field]) {
                unserved(field, season.areaDm2[field], Shortfall.LEFT_OUT, 0);
            }
        }
    }

    /** The planter whose request is the earliest; -1 when none is left. */
    private int next() {
        int best = -1;
        long earliest = NEVER;
        for (int p = 0; p < sizes.length; p++) {
            long need = v[state.planter(p) + NEED];
            if (need < earliest) {
                earliest = need;
                best = p;
            }
        }
        return best;
    }

    private void serve(int p) {
        int base = state.planter(p);
        int need = (int) v[base + NEED];
        int lotFrom = lots.availableFrom();
        if (lotFrom >= NEVER) {
            giveUp(p, Shortfall.COMPOST, need);
            return;
        }
        if (lotFrom > need) {
            awaitCompost(p, need, lotFrom);
            return;
        }
        quote.planter = p;
        quote.place = (int) v[base + PLACE];
        quote.recipe = season.recipeOf[planting.field(p, (int) v[base + INDEX])];
        quote.need = need;
        if (!chooseRig()) {
            giveUp(p, Shortfall.NO_LOAD, need);
            return;
        }
        long mixDm2 = sizer.size();
        if (quote.source == Quote.Source.ON_BOARD && (mixDm2 == 0 || notWorthwhile(mixDm2))) {
            quote.source = Quote.Source.AT_WATER;
            mixDm2 = sizer.size();
        }
        boolean fresh = v[base + FRESH] == 1;
        if (mixDm2 == 0 || (!fresh && notWorthwhile(mixDm2))) {
            v[base + POSTPONED] += fresh ? 1 : 0;
            askAfresh(p, need, -1);
            return;
        }
        v[base + POSTPONED] = 0;
        supply(p, base, need, mixDm2);
        ask(p);
    }

    private void supply(int p, int base, int need, long mixDm2) {
        long loadDm2 = sizer.loadOf(mixDm2);
        standBy(p, base);
        waitFor(p, base, need);
        state.add(State.FILLS, 1);
        int start = quote.transferStart;
        int end = start + quote.transferS;
        int deadline = quote.deadline;
        int recipe = quote.recipe;
        rigWork.bring(quote, loadDm2, mixDm2, journal);
        if (journal != null) {
            journal.filled(p, quote.rig, recipe, quote.place, start, end, season.mixMl(loadDm2, recipe), deadline);
        }
        rigWork.leave(quote, journal);
        planting.begin(p, end);
        long applied = planting.walk(p, recipe, loadDm2, deadline, true, journal);
        planting.commit(p);
        if (applied < loadDm2) {
            throw new IllegalStateException("a load for " + loadDm2 + " dm2 planted only " + applied);
        }
        v[base + FILL_DAY] = start / Calendars.DAY_S;
        int margin = state.counters + State.SMALLEST_MARGIN_S;
        v[margin] = Math.min(v[margin], deadline - planting.time);
    }

    private void waitFor(int p, int base, int need) {
        int start = quote.transferStart;
        boolean compost = v[base + AWAITS_COMPOST] == 1;
        int from = compost ? (int) Math.max(v[base + WAIT_FROM], v[base + TIME]) : need;
        v[base + AWAITS_COMPOST] = 0;
        if (start <= from) {
            return;
        }
        WaitReason why = compost
                ? WaitReason.COMPOST
                : quote.rigReady <= need ? WaitReason.HOURS : quote.waitedForWater ? WaitReason.WATER : WaitReason.RIG;
        if (why != WaitReason.HOURS) {
            state.add(State.WAIT_S, season.planterHours[p].work(from, start));
        }
        if (journal != null) {
            journal.waited(p, quote.place, from, start, why);
        }
    }

    /** The rig that can start the transfer of the largest load earliest; ties go to less driving, then to the season's order. */
    private boolean chooseRig() {
        int best = -1;
        int bestStart = NEVER;
        int bestMetres = 0;
        Quote.Source bestSource = Quote.Source.BESIDE_PLANTER;
        quote.wholeAfterBreak = false;
        for (int r = 0; r < season.rigCount(); r++) {
            quote.rig = r;
            quote.source = Quote.Source.BESIDE_PLANTER;
            if (season.extractsAtWater[r]) {
                int rig = state.rig(r);
                quote.source = Quote.Source.AT_WATER;
                if (v[rig + MIX_DM2] > 0 && v[rig + MIX_RECIPE] == quote.recipe) {
                    quote.source = Quote.Source.ON_BOARD;
                    long onBoard = sizer.ceiling();
                    if (quote.ask(onBoard, onBoard) >= quote.deadline) {
                        quote.source = Quote.Source.AT_WATER;
                    }
                }
            }
            long ceiling = sizer.ceiling();
            if (ceiling <= 0) {
                continue;
            }
            int start = quote.ask(sizer.loadOf(ceiling), ceiling);
            if (start < bestStart || (start == bestStart && start < NEVER && quote.metres < bestMetres)) {
                best = r;
                bestStart = start;
                bestMetres = quote.metres;
                bestSource = quote.source;
            }
        }
        quote.rig = Math.max(0, best);
        quote.source = bestSource;
        return best >= 0;
    }

    /** A load held down by age that would be gone sooner than its own transfer takes. */
    private boolean notWorthwhile(long mixDm2) {
        long load = sizer.loadOf(mixDm2);
        return sizer.timeLimited && load < quote.transferS(load) * season.capacityDm2PerS[quote.planter];
    }

    /** The planter's next request after a load: where it stands, or afresh when it has not been filled on that date yet. */
    private void ask(int p) {
        int base = state.planter(p);
        int t = (int) v[base + TIME];
        if (v[base + INDEX] >= sizes[p]) {
            v[base + NEED] = NEVER;
            return;
        }
        int need = season.planterHours[p].next(t);
        if (v[base + FILL_DAY] == need / Calendars.DAY_S) {
            v[base + FRESH] = 0;
            v[base + NEED] = need;
        } else {
            askAfresh(p, -1, -1);
        }
    }

    /**
     * Sends the planter to its next field, to ask there at the moment planting could start.
     *
     * @param after only planting periods that begin after this, -1 for any
     * @param from not before this, -1 for any time
     */
    private void askAfresh(int p, int after, int from) {
        int base = state.planter(p);
        Calendar hours = season.planterHours[p];
        for (int i = (int) v[base + INDEX]; i < sizes[p]; i = (int) v[base + INDEX]) {
            int field = lists[p][i];
            int place = (int) v[base + PLACE];
            int t = (int) v[base + TIME];
            Calendar plantable = season.plantable[p][field];
            int open = season.openS[field];
            int duration = place == field ? 0 : planting.moveS(p, place, field);
            int start = place == field ? t : hours.earliest(t, duration);
            int there = start + duration;
            int soonest = Math.max(Math.max(there, open), from);
            if (after >= 0 && open <= after) {
                soonest = Math.max(soonest, plantable.nextStart(after));
            }
            int need = plantable.next(soonest);
            if (need < NEVER) {
                if (place != field) {
                    planting.moved(p, place, field, start, duration, journal);
                    v[base + PLACE] = field;
                    v[base + TIME] = there;
                }
                v[base + FRESH] = 1;
                v[base + NEED] = need;
                return;
            }
            boolean tooShort = v[base + POSTPONED] >= HOPELESS;
            unserved(field, v[base + LEFT_DM2], tooShort ? Shortfall.HOLD_TIME : Shortfall.SEASON_ENDS, t);
            v[base + POSTPONED] = 0;
            v[base + INDEX]++;
            v[base + LEFT_DM2] = i + 1 < sizes[p] ? season.areaDm2[lists[p][i + 1]] : 0;
        }
        v[base + NEED] = NEVER;
    }

    /** Records how long the planter stood at its field before that could be planted. */
    private void standBy(int p, int base) {
        if (journal == null || v[base + FRESH] == 0 || v[base + AWAITS_COMPOST] == 1) {
            return;
        }
        int field = lists[p][(int) v[base + INDEX]];
        int open = season.openS[field];
        int from = season.planterHours[p].next((int) v[base + TIME]);
        int until = season.plantable[p][field].next(Math.max(from, open));
        if (from < until) {
            journal.waited(p, field, from, until, from < open ? WaitReason.WINDOW : WaitReason.WET);
        }
    }

    private void awaitCompost(int p, int need, int lotFrom) {
        int base = state.planter(p);
        askAfresh(p, -1, lotFrom);
        if (v[base + AWAITS_COMPOST] == 0) {
            v[base + AWAITS_COMPOST] = 1;
            v[base + WAIT_FROM] = need;
        }
    }

    /** Nothing in the planter's list can be served any more. */
    private void giveUp(int p, Shortfall why, int since) {
        int base = state.planter(p);
        for (int i = (int) v[base + INDEX]; i < sizes[p]; i++) {
            long left = i == v[base + INDEX] ? v[base + LEFT_DM2] : season.areaDm2[lists[p][i]];
            unserved(lists[p][i], left, why, since);
        }
        v[base + NEED] = NEVER;
    }

    private void unserved(int field, long dm2, Shortfall why, int since) {
        state.add(UNSERVED_DM2, dm2);
        if (journal != null) {
            journal.unserved(field, dm2, why, since);
        }
    }

    @Override
    public int forbiddenFields() {
        return (int) state.get(MISPLACED_FIELDS);
    }

    @Override
    public long unservedDm2() {
        return state.get(UNSERVED_DM2);
    }

    @Override
    public long lateMilliDm2Days() {
        return state.get(State.WEIGHTED_LATE_DM2_DAYS);
    }

    /** Area planted after its window times the days after, unweighted, dm2 x days. */
    public long lateDm2Days() {
        return state.get(State.LATE_DM2_DAYS);
    }

    @Override
    public int fills() {
        return (int) state.get(State.FILLS);
    }

    @Override
    public int waterTrips() {
        return (int) state.get(State.WATER_TRIPS);
    }

    @Override
    public long waitS() {
        return state.get(State.WAIT_S);
    }

    @Override
    public long driveS() {
        return state.get(State.DRIVE_S);
    }

    @Override
    public long dumpedMg() {
        return state.get(State.DUMPED_MG);
    }

    @Override
    public long earlyDm2Days() {
        return state.get(State.EARLY_DM2_DAYS);
    }

    /** A count that only the record needs, by its place in {@link State}. */
    long count(int counter) {
        return state.get(counter);
    }

    /** Broken rules, negated: 0 or less. */
    public long hard() {
        return goals.hard(this);
    }

    /** Late and unserved area, hundredths of weighted ha-days, negated: 0 or less. */
    public long medium() {
        return goals.medium(this);
    }

    /** Effort, minutes, negated: 0 or less. */
    public long soft() {
        return goals.soft(this);
    }
}
