package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.calendar.Calendar.NEVER;

import freshfurrow.model.goals.Counters;
import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.timeline.actual.ActualTimes;
import freshfurrow.model.timeline.load.FillService;
import freshfurrow.model.timeline.planters.FieldOrder;
import freshfurrow.model.timeline.planters.Flushing;
import freshfurrow.model.timeline.planters.Foreseen;
import freshfurrow.model.timeline.planters.Planting;
import freshfurrow.model.timeline.planters.Requests;
import freshfurrow.model.timeline.planters.Walk;
import freshfurrow.model.timeline.state.Journal;
import freshfurrow.model.timeline.state.State;
import freshfurrow.model.timeline.state.Tally;
import freshfurrow.model.timeline.tables.SeasonTables;

/**
 * A season played out for given lists of fields: the one computation behind every figure. {@link #run} and {@link #rerun} may be
 * called any number of times and allocate nothing; the counters tell of the last run. Not for use by several threads at once.
 */
public final class Timeline implements Counters {
    private final SeasonTables tables;
    private final State state;
    private final FieldOrder order;
    private final Requests requests;
    private final FillService service;
    private final Checkpoints checkpoints;
    private final Foreseen foreseen;
    private final GoalSet goals;
    private final int fixedDays;

    public Timeline(CompiledSeason season) {
        tables = season.tables();
        state = new State(tables);
        order = new FieldOrder(tables);
        Walk walk = new Walk(tables, state.planters(), order);
        Flushing flushing = new Flushing(tables, state);
        foreseen = new Foreseen(tables.planters().count());
        Planting planting = new Planting(tables, state, walk, flushing, foreseen);
        requests = new Requests(tables, state, order, planting, flushing);
        service = new FillService(tables, state, order, walk, planting, requests, flushing, foreseen);
        checkpoints = new Checkpoints(tables, state);
        goals = GoalSet.of(season.season());
        fixedDays = tables.fields().fixedDays();
    }

    /**
     * Plays the season out from its first day.
     *
     * @param fieldLists for each planter, indices of fields in its order; a field stands in one list at most
     * @param listSizes how many entries of each list count
     */
    public void run(int[][] fieldLists, int[] listSizes) {
        state.tellNobody();
        begin(fieldLists, listSizes);
        playUntil(NEVER);
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
        service.end();
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
        service.end();
        return true;
    }

    private void restart(int[][] fieldLists, int[] listSizes) {
        state.tellNobody();
        order.take(fieldLists, listSizes);
        if (!checkpoints.restart(order)) {
            begin();
        }
    }

    /** The lists of the last rerun are those that the next ones differ from by little. */
    public void adopt() {
        checkpoints.adopt();
    }

    void play(int[][] fieldLists, int[] listSizes, Journal journal) {
        play(fieldLists, listSizes, journal, NEVER);
    }

    /** Plays out all that begins before {@code untilS}; of what begins later there may be some, and there may be more to come. */
    void play(int[][] fieldLists, int[] listSizes, Journal journal, int untilS) {
        state.tell(journal);
        begin(fieldLists, listSizes);
        order.tellLeftOut(fieldLists, listSizes, journal);
        playUntil(untilS);
    }

    private void begin(int[][] fieldLists, int[] listSizes) {
        order.take(fieldLists, listSizes);
        begin();
    }

    private void playUntil(int untilS) {
        while (requests.mayBeginBefore(untilS) && serveNext()) {
            // each request changes what the next one is
        }
        if (requests.next() < 0) {
            service.end();
        }
    }

    /** From now on all takes the time that it takes as it turns out in the simulated season of a number, if the season has a spread. */
    void turnsOut(long number) {
        if (tables.season().timesVary()) {
            state.turnsOut(new ActualTimes(tables, tables.season().spread().orElseThrow(), number));
        }
    }

    private void begin() {
        state.reset();
        foreseen.forgetAll();
        requests.open();
    }

    /** When a planter has done with its list in what was played last, seconds since the season's first midnight. */
    public int doneS(int planter) {
        return state.planters().timeS(planter);
    }

    private boolean serveNext() {
        int planter = requests.next();
        if (planter < 0) {
            return false;
        }
        service.serve(planter);
        return true;
    }

    @Override
    public int forbiddenFields() {
        return order.misplacedFields();
    }

    @Override
    public int brokenPromises() {
        return fixedDays - (int) count(Tally.FIXED_KEPT);
    }

    @Override
    public long unservedDm2() {
        return count(Tally.UNSERVED_DM2) + order.leftOutDm2();
    }

    @Override
    public long lateMilliDm2Days() {
        return count(Tally.WEIGHTED_LATE_DM2_DAYS);
    }

    @Override
    public long lateDm2Days() {
        return count(Tally.LATE_DM2_DAYS);
    }

    @Override
    public long untreatedMilliDm2() {
        return count(Tally.WEIGHTED_UNTREATED_DM2);
    }

    @Override
    public int fills() {
        return (int) count(Tally.FILLS);
    }

    @Override
    public int waterTrips() {
        return (int) count(Tally.WATER_TRIPS);
    }

    @Override
    public long waitS() {
        return count(Tally.WAIT_S);
    }

    @Override
    public long idleS() {
        return count(Tally.IDLE_S);
    }

    @Override
    public long driveS() {
        return count(Tally.DRIVE_S);
    }

    @Override
    public long dumpedMg() {
        return count(Tally.DUMPED_MG);
    }

    @Override
    public int movedFields() {
        return (int) count(Tally.MOVED_FIELDS);
    }

    @Override
    public int scraps() {
        return (int) count(Tally.SCRAPS);
    }

    @Override
    public int compostTrips() {
        return (int) count(Tally.COMPOST_TRIPS);
    }

    @Override
    public int callOuts() {
        return (int) count(Tally.CALL_OUTS);
    }

    @Override
    public long overtimeS() {
        return count(Tally.OVERTIME_S);
    }

    @Override
    public long earlyDm2Days() {
        return count(Tally.EARLY_DM2_DAYS);
    }

    @Override
    public long untreatedDm2() {
        return count(Tally.UNTREATED_DM2);
    }

    @Override
    public long compostMg() {
        return count(Tally.COMPOST_MG);
    }

    @Override
    public long drawnMl() {
        return count(Tally.DRAWN_ML);
    }

    @Override
    public long driveM() {
        return count(Tally.DRIVE_M);
    }

    @Override
    public long workS() {
        return count(Tally.WORK_S);
    }

    /** A count that only the record needs, by its place in the {@link Tally}. */
    long count(int count) {
        return state.tally().get(count);
    }

    /** Broken rules, negated: 0 or less. */
    public long hard() {
        return goals.hard(this);
    }

    /** Late and unserved area, hundredths of weighted ha-days, or by money the bill in millionths, negated: 0 or less. */
    public long medium() {
        return goals.medium(this);
    }

    /** Effort, minutes, negated: 0 or less. */
    public long soft() {
        return goals.soft(this);
    }
}
