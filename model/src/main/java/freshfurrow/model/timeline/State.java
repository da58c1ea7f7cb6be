package freshfurrow.model.timeline;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * All that changes while a timeline is played, in one flat array of whole numbers, so that it can be kept and put back with
 * one copy. Each part of it knows its own block.
 */
final class State {
    final Tally tally;
    final PlanterStates planters;
    final RigStates rigs;
    final CompostLots lots;
    final Draws draws;

    /** Told of all that happens; absent in the search. */
    @Nullable
    Journal journal;

    private final long[] v;
    private final CompiledSeason season;

    State(CompiledSeason season) {
        this.season = season;
        int planterBlocks = Tally.SIZE;
        int rigBlocks = planterBlocks + season.planterCount() * PlanterStates.SIZE;
        int lotBlock = rigBlocks + season.rigs.count() * RigStates.SIZE;
        int drawBlocks = lotBlock + season.compost.count();
        v = new long[drawBlocks + season.water.count() * Draws.size(season.days)];
        tally = new Tally(v);
        planters = new PlanterStates(v, planterBlocks);
        rigs = new RigStates(v, rigBlocks);
        lots = new CompostLots(season.compost, v, lotBlock);
        draws = new Draws(season.water, season.days, v, drawBlocks);
    }

    /** Where the season begins. What is in planters' tanks is not in the state: that is planted, or let out, first of all. */
    void reset() {
        Beginning beginning = season.beginning;
        Arrays.fill(v, 0);
        tally.reset();
        for (int p = 0; p < season.planterCount(); p++) {
            planters.stand(p, beginning.planterPlace[p], beginning.planterFreeS[p]);
            planters.filledOn(p, beginning.fillDay[p]);
        }
        for (int r = 0; r < season.rigs.count(); r++) {
            rigs.moveTo(r, beginning.rigPlace[r]);
            rigs.freeFrom(r, beginning.rigFreeS[r]);
            rigs.water(r, beginning.waterMl[r]);
            rigs.mix(
                    r,
                    beginning.mixDm2[r],
                    beginning.mixRecipe[r],
                    beginning.mixDeadlineS[r],
                    beginning.mixDeadlineS[r]);
            rigs.cleanDue(r, beginning.cleanDue[r]);
        }
        for (int w = 0; w < season.water.count(); w++) {
            draws.use(w, season.beginsOnDay(), beginning.drawnMl[w]);
        }
        lots.reset();
    }

    /** A copy of all of it, in an array that one was kept in before or, if that is empty, a new one. */
    long[] keepIn(long[] kept) {
        long[] into = kept.length == 0 ? new long[v.length] : kept;
        System.arraycopy(v, 0, into, 0, v.length);
        return into;
    }

    /** Puts back what was kept. */
    void putBack(long[] kept) {
        System.arraycopy(kept, 0, v, 0, v.length);
    }
}
