package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.AWAITS_COMPOST;
import static freshfurrow.model.timeline.State.FILL_DAY;
import static freshfurrow.model.timeline.State.FRESH;
import static freshfurrow.model.timeline.State.INDEX;
import static freshfurrow.model.timeline.State.MISPLACED_FIELDS;
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
    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private final Planting planting;
    private final CompostLots lots;
    private final Quote quote;
    private final LoadSizer sizer;
    private final RigWork rigWork;
    private final RigChoice rigChoice;
    private final Requests requests;
    private final int[][] lists;
    private final int[] sizes;
    private final boolean[] listed;
    private final GoalSet goals;

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
        rigChoice = new RigChoice(season, state, quote, sizer);
        requests = new Requests(season, state, planting);
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
        state.journal = journalOrNull;
        state.reset();
        takeLists(fieldLists, listSizes);
        requests.open();
        for (int p = requests.next(); p >= 0; p = requests.next()) {
            serve(p);
        }
        for (int r = 0; r < season.rigCount(); r++) {
            rigWork.dumpLeftover(r);
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
                    requests.unserved(field, season.areaDm2[field], Shortfall.NOT_ALLOWED, 0);
                }
            }
        }
        for (int field = 0; field < listed.length; field++) {
            if (!listed[field]) {
                requests.unserved(field, season.areaDm2[field], Shortfall.LEFT_OUT, 0);
            }
        }
    }

    private void serve(int p) {
        int base = state.planter(p);
        int need = (int) v[base + NEED];
        int lotFrom = lots.availableFrom();
        if (lotFrom >= NEVER) {
            requests.giveUp(p, Shortfall.COMPOST, need);
            return;
        }
        if (lotFrom > need) {
            requests.awaitCompost(p, lotFrom);
            return;
        }
        quote.planter = p;
        quote.place = (int) v[base + PLACE];
        quote.recipe = season.recipeOf[planting.field(p, (int) v[base + INDEX])];
        quote.need = need;
        if (!rigChoice.choose()) {
            requests.giveUp(p, Shortfall.NO_LOAD, need);
            return;
        }
        boolean standing = v[base + FRESH] == 0;
        long mixDm2 = sizer.size(standing || quote.source == Quote.Source.ON_BOARD);
        if (quote.source == Quote.Source.ON_BOARD && mixDm2 == 0) {
            quote.source = Quote.Source.AT_WATER;
            mixDm2 = sizer.size(standing);
        }
        if (mixDm2 == 0) {
            requests.postpone(p);
            return;
        }
        v[base + POSTPONED] = 0;
        supply(p, base, need, mixDm2);
        requests.ask(p);
    }

    private void supply(int p, int base, int need, long mixDm2) {
        long loadDm2 = sizer.loadOf(mixDm2);
        requests.standBy(p, base);
        waitFor(p, base, need);
        state.add(State.FILLS, 1);
        int start = quote.transferStart;
        int end = start + quote.transferS;
        int deadline = quote.deadline;
        int recipe = quote.recipe;
        rigWork.bring(quote, loadDm2, mixDm2);
        if (state.journal != null) {
            state.journal.filled(
                    p, quote.rig, recipe, quote.place, start, end, season.mixMl(loadDm2, recipe), deadline);
        }
        rigWork.leave(quote);
        planting.begin(p, end);
        long applied = planting.walk(p, recipe, loadDm2, deadline, true);
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
        if (state.journal != null) {
            state.journal.waited(p, quote.place, from, start, why);
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
