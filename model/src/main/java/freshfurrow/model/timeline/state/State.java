package freshfurrow.model.timeline.state;

import freshfurrow.model.timeline.actual.ActualTimes;
import freshfurrow.model.timeline.tables.Beginning;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * All that changes while a timeline is played, in one flat array of whole numbers, so that it can be kept and put back with
 * one copy. Each part of it knows its own block.
 */
public final class State {
    private final Tally tally;
    private final PlanterStates planters;
    private final PlanterDays days;
    private final RigStates rigs;
    private final CompostLots lots;
    private final Draws draws;
    private final HoursAtWork hours;
    private final IdleDays idle;

    private final long[] v;
    private final SeasonTables tables;

    @Nullable
    private Journal journal;

    @Nullable
    private ActualTimes actual;

    public State(SeasonTables tables) {
        this.tables = tables;
        int planterBlocks = Tally.SIZE;
        int dayBlocks = planterBlocks + tables.planters().count() * PlanterStates.SIZE;
        int rigBlocks = dayBlocks + tables.planters().count() * PlanterDays.SIZE;
        int lotBlock = rigBlocks + tables.rigs().count() * RigStates.SIZE;
        int drawBlocks = lotBlock + CompostLots.size(tables);
        int hourBlocks =
                drawBlocks + tables.water().count() * Draws.size(tables.season().days());
        int idleBlocks = hourBlocks + HoursAtWork.size(tables);
        v = new long[idleBlocks + IdleDays.size(tables)];
        tally = new Tally(v);
        planters = new PlanterStates(v, planterBlocks);
        idle = new IdleDays(tables, tally, v, idleBlocks);
        days = new PlanterDays(tables, tally, idle, v, dayBlocks);
        rigs = new RigStates(v, rigBlocks);
        lots = new CompostLots(tables, tally, v, lotBlock);
        draws = new Draws(tables.water(), tables.season().days(), v, drawBlocks);
        hours = new HoursAtWork(tables, tally, v, hourBlocks);
    }

    /** Where the season begins. What is in planters' tanks is not in the state: that is planted, or let out, first of all. */
    public void reset() {
        Beginning beginning = tables.beginning();
        Arrays.fill(v, 0);
        tally.reset();
        for (int p = 0; p < tables.planters().count(); p++) {
            planters.stand(p, beginning.planterPlace(p), beginning.planterFreeS(p));
            planters.filledOn(p, beginning.fillDay(p));
        }
        for (int r = 0; r < tables.rigs().count(); r++) {
            rigs.moveTo(r, beginning.rigPlace(r));
            rigs.freeFrom(r, beginning.rigFreeS(r));
            rigs.water(r, beginning.waterMl(r));
            rigs.mix(
                    r,
                    beginning.mixDm2(r),
                    beginning.mixRecipe(r),
                    beginning.mixDeadlineS(r),
                    beginning.mixDeadlineS(r));
            rigs.cleanDue(r, beginning.isCleanDue(r));
        }
        for (int w = 0; w < tables.water().count(); w++) {
            draws.use(w, tables.beginning().day(), beginning.drawnMl(w));
        }
        lots.reset();
        hours.reset();
    }

    /** A copy of all of it, in an array that one was kept in before or, if that is empty, a new one. */
    public long[] keepIn(long[] kept) {
        long[] into = kept.length == 0 ? new long[v.length] : kept;
        System.arraycopy(v, 0, into, 0, v.length);
        return into;
    }

    /** Puts back what was kept. */
    public void putBack(long[] kept) {
        System.arraycopy(kept, 0, v, 0, v.length);
    }

    public void tell(Journal told) {
        journal = told;
    }

    public void tellNobody() {
        journal = null;
    }

    /** Whether anybody is told of what happens; in the search nobody is. */
    public boolean isTold() {
        return journal != null;
    }

    /**
     * Who is told of all that happens.
     *
     * @throws NullPointerException when nobody is
     */
    public Journal journal() {
        return Objects.requireNonNull(journal);
    }

    /** From now on all takes the time that it takes as it turns out, and not what the season says. */
    public void turnsOut(ActualTimes times) {
        actual = times;
    }

    /** What things take as it turns out; null where all goes as planned. */
    @Nullable
    public ActualTimes actual() {
        return actual;
    }

    public Tally tally() {
        return tally;
    }

    public PlanterStates planters() {
        return planters;
    }

    public PlanterDays days() {
        return days;
    }

    public RigStates rigs() {
        return rigs;
    }

    public CompostLots lots() {
        return lots;
    }

    public Draws draws() {
        return draws;
    }

    public IdleDays idle() {
        return idle;
    }

    public HoursAtWork hours() {
        return hours;
    }
}
