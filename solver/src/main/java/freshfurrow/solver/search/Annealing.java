package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListScorer;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.stop.StopSignal;
import java.util.function.BiConsumer;

/** One annealing after another: for one thread, but for {@link #stop}. */
final class Annealing {
    /** Annealing accepts what is worse by so many times its heat with a chance of e to the power of -40, 4e-18. */
    private static final double NEVER_ACCEPTED = 40;

    private final SeasonEstimate estimate;
    private final NearFields near;
    private final EnvironmentMode mode;
    private final BiConsumer<FieldLists, HardMediumSoftLongScore> onBetter;
    private final StopSignal stop;
    private long movesTried;

    /**
     * @param stop ends a run soon
     * @param onBetter told of better lists and their score
     */
    Annealing(
            SeasonEstimate estimate,
            NearFields near,
            EnvironmentMode mode,
            StopSignal stop,
            BiConsumer<FieldLists, HardMediumSoftLongScore> onBetter) {
        this.estimate = estimate;
        this.near = near;
        this.mode = mode;
        this.stop = stop;
        this.onBetter = onBetter;
    }

    /**
     * The best of the lists that it comes by, {@code start} among them.
     *
     * @param scorer no other thread's
     * @param heat the score by which an accepted move may worsen the lists at the start; falls to 0 at the end
     */
    Schedule run(ListScorer scorer, FieldLists start, long seed, HardMediumSoftLongScore heat, TerminationConfig end) {
        LibrarySearch search = new LibrarySearch(
                AnnealingConfig.of(seed, heat, end, mode, scorer.season().mayGoWithout()));
        search.onBetter(event -> onBetter.accept(event.getNewBestSolution().fields(), LibrarySearch.score(event)));
        search.onStep(done -> scorer.stepTaken(neverAccepted(heat.mediumScore() * (1 - done))));
        Schedule found = search.run(Schedule.of(scorer, estimate, near, start), stop);
        movesTried += search.movesTried();
        return found;
    }

    private long neverAccepted(double mediumHeat) {
        return mode == EnvironmentMode.NO_ASSERT ? (long) Math.ceil(NEVER_ACCEPTED * mediumHeat) : Long.MAX_VALUE;
    }

    /** Moves tried in all runs that have ended. */
    long movesTried() {
        return movesTried;
    }
}
