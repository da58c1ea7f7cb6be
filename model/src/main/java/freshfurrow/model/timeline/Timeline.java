package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.AWAITS_COMPOST;
import static freshfurrow.model.timeline.State.FILL_DAY;
import static freshfurrow.model.timeline.State.FRESH;
import static freshfurrow.model.timeline.State.INDEX;
import static freshfurrow.model.timeline.State.NEED;
import static freshfurrow.model.timeline.State.PLACE;
import static freshfurrow.model.timeline.State.POSTPONED;
import static freshfurrow.model.timeline.State.UNSERVED_DM2;
import static freshfurrow.model.timeline.State.WAIT_FROM;

import freshfurrow.model.goals.Counters;
import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.plan.WaitReason;
import org.jspecify.annotations.Nullable;

/**
 * A season played out for given lists of fields: the one computation behind every figure. {@link #run} and {@link #rerun} may be
 * called any number of times and allocate nothing; the counters tell of the last run. Not for use by several threads at once.
 */
public final class Timeline implements Counters {
    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private final Planting planting;
    private final CompostLots lots;
    private final LoadSizer sizer;
    private final RigWork rigWork;
    private final RigChoice rigChoice;
    private final LoadChoice loadChoice;
    private final Requests requests;
    private final FieldOrder order;
    private final Checkpoints checkpoints;
    private final GoalSet goals;

    public Timeline(CompiledSeason season) {
        this.season = season;
        state = new State(season);
        v = state.v;
        order = new FieldOrder(season);
        planting = new Planting(season, state, order);
        lots = new CompostLots(season, state);
        WaterPoints points = new WaterPoints(season, state);
        sizer = new LoadSizer(season, state, lots, planting);
        rigWork = new RigWork(season, state, points, lots);
        rigChoice = new RigChoice(season, state, points, lots, sizer);
        loadChoice = new LoadChoice(season, rigChoice, sizer, planting);
        requests = new Requests(season, state, planting);
        checkpoints = new Checkpoints(season, state);
        goals = GoalSet.of(season.season());
    }

    /**
     * Plays the season out from its first day.
     *
     * @param fieldLists for each planter, indices of fields in its order; a field stands in one list at most
     * @param listSizes how many entries of each list count
     */
    public void run(int[][] fieldLists, int[] listSizes) {
        play(fieldLists, listSizes, null);
    }

    /**
     * Plays the season out like {@link #run}, to the same figures, but only from where the lists begin to matter that differ from
     * those of the first rerun or of {@link #adopt}.
     *
     * @param leastMedium where the medium score falls below this, which no later part of the season makes good, no more is played and
     *     the figures are those up to there
     */
    public void rerun(int[][] fieldLists, int[] listSizes, long leastMedium) {
        restart(fieldLists, listSizes);
        while (serveNext()) {
            if (checkpoints.served() && medium() < leastMedium) {
                return;
            }
        }
        end();
    }

    /**
     * Plays the season out like {@link #rerun}.
     *
     * @param mostMoved as soon as more fields have been moved from where they were promised to be, which nothing later takes back, no
     *     more is played
     * @return whether all was played
     */
    public boolean rerunUnlessMoved(int[][] fieldLists, int[] listSizes, int mostMoved) {
        restart(fieldLists, listSizes);
        while (movedFields() <= mostMoved && serveNext()) {
            checkpoints.served();
        }
        if (movedFields() > mostMoved) {
            return false;
        }
        end();
        return true;
    }

    private void restart(int[][] fieldLists, int[] listSizes) {
        state.journal = null;
        order.take(fieldLists, listSizes);
        if (!checkpoints.restart(order)) {
            begin();
        }
    }

    /** The lists of the last rerun are those that the next ones differ from by little. */
    public void adopt() {
        checkpoints.adopt();
    }

    void play(int[][] fieldLists, int[] listSizes, @Nullable Journal journalOrNull) {
        play(fieldLists, listSizes, journalOrNull, NEVER);
    }

    /** Plays out all that begins before {@code untilS}; of what begins later there may be some, and there may be more to come. */
    void play(int[][] fieldLists, int[] listSizes, @Nullable Journal journalOrNull, int untilS) {
        state.journal = journalOrNull;
        order.take(fieldLists, listSizes);
        begin();
        if (journalOrNull != null) {
            order.tellLeftOut(fieldLists, listSizes, journalOrNull);
        }
        while (requests.mayBeginBefore(untilS) && serveNext()) {
            // each request changes what the next one is
        }
        if (requests.next() < 0) {
            end();
        }
    }

    private void begin() {
        state.reset();
        requests.open();
    }

    private void end() {
        for (int r = 0; r < season.rigs.count(); r++) {
            rigWork.dumpLeftover(r);
        }
    }

    private boolean serveNext() {
        int p = requests.next();
        if (p < 0) {
            return false;
        }
        serve(p);
        return true;
    }

    private void serve(int p) {
        int base = state.planter(p);
        int need = (int) v[base + NEED];
        int recipe = season.fields.recipe(order.field(p, (int) v[base + INDEX]));
        int lotFrom = lots.availableFrom();
        if (lotFrom > need && !rigChoice.hasMix(recipe, need)) {
            if (lotFrom >= NEVER) {
                requests.giveUp(p, Shortfall.COMPOST, need);
                return;
            }
            requests.awaitCompost(p, lotFrom);
            return;
        }
        boolean standing = v[base + FRESH] == 0;
        Quote quote = loadChoice.choose(p, (int) v[base + PLACE], recipe, need, standing);
        if (quote == null) {
            requests.giveUp(p, lots.availableFrom() >= NEVER ? Shortfall.COMPOST : Shortfall.NO_LOAD, need);
            return;
        }
        long mixDm2 = loadChoice.mixDm2;
        if (mixDm2 == 0) {
            requests.postpone(p);
            return;
        }
        v[base + POSTPONED] = 0;
        supply(quote, mixDm2);
        requests.ask(p);
    }

    private void supply(Quote quote, long mixDm2) {
        int p = quote.planter;
        int base = state.planter(p);
        long loadDm2 = sizer.loadOf(quote, mixDm2);
        waitFor(quote, base);
        state.add(State.FILLS, 1);
        int start = quote.transferStart;
        int end = start + quote.transferS;
        int deadline = quote.deadline;
        int recipe = quote.recipe;
        rigWork.bring(quote, loadDm2, mixDm2);
        if (state.journal != null) {
            state.journal.filled(
                    p, quote.rig, recipe, quote.place, start, end, season.recipes.mixMl(loadDm2, recipe), deadline);
        }
        rigWork.leave(quote);
        long applied = planting.plant(p, end, recipe, loadDm2, deadline);
        if (applied < loadDm2) {
            throw new IllegalStateException("a load for " + loadDm2 + " dm2 planted only " + applied);
        }
        v[base + FILL_DAY] = start / Calendars.DAY_S;
        int margin = state.counters + State.SMALLEST_MARGIN_S;
        v[margin] = Math.min(v[margin], season.clock.between(planting.time, deadline));
    }

    /** A wait counts from when planting of the planter's next field could start. */
    private void waitFor(Quote quote, int base) {
        int p = quote.planter;
        int start = quote.transferStart;
        boolean compost = v[base + AWAITS_COMPOST] == 1;
        v[base + AWAITS_COMPOST] = 0;
        int couldPlant = requests.couldPlantFrom(p);
        requests.standBy(p, Math.min(couldPlant, start));
        int from = Math.max(compost ? (int) v[base + WAIT_FROM] : quote.need, couldPlant);
        if (start <= from) {
            return;
        }
        WaitReason why = compost
                ? WaitReason.COMPOST
                : quote.rigReady <= from ? WaitReason.HOURS : quote.waitedForWater ? WaitReason.WATER : WaitReason.RIG;
        if (why != WaitReason.HOURS) {
            state.add(State.WAIT_S, season.planters.hours(p).work(from, start));
        }
        if (state.journal != null) {
            state.journal.waited(p, quote.place, from, start, why);
        }
    }

    @Override
    public int forbiddenFields() {
        return order.misplacedFields();
    }

    @Override
    public long unservedDm2() {
        return state.get(UNSERVED_DM2) + order.leftOutDm2();
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
    public int movedFields() {
        return (int) state.get(State.MOVED_FIELDS);
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
