package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import ai.timefold.solver.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import ai.timefold.solver.core.impl.phase.scope.AbstractStepScope;
import ai.timefold.solver.core.impl.solver.DefaultSolver;
import ai.timefold.solver.core.impl.solver.scope.SolverScope;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Schedule;
import org.jspecify.annotations.Nullable;

/** One annealing after another on a timeline of its own: for one thread, but for {@link #stop}. */
final class Annealing {
    private final SeasonEstimate estimate;
    private final NearFields near;
    private final EnvironmentMode mode;
    private final BestSoFar best;
    private final ListPlayer player;
    private long movesTried;
    private volatile boolean stopped;
    private volatile @Nullable Solver<Schedule> solver;

    /**
     * Annealings of one season.
     *
     * @param player for nobody else
     * @param best told of better lists
     */
    Annealing(ListPlayer player, SeasonEstimate estimate, NearFields near, EnvironmentMode mode, BestSoFar best) {
        this.estimate = estimate;
        this.near = near;
        this.mode = mode;
        this.best = best;
        this.player = player;
    }

    /**
     * The best of the lists that it comes by, {@code start} among them.
     *
     * @param heat the score by which an accepted move may worsen the lists at the start; falls to 0 at the end
     */
    Schedule run(FieldLists start, long seed, HardMediumSoftLongScore heat, TerminationConfig end) {
        DefaultSolver<Schedule> annealing =
                (DefaultSolver<Schedule>) SolverFactory.<Schedule>create(AnnealingConfig.of(seed, heat, end, mode))
                        .buildSolver();
        annealing.addEventListener(event ->
                best.offer(event.getNewBestSolution().fields(), (HardMediumSoftLongScore) event.getNewBestScore()));
        annealing.addPhaseLifecycleListener(new Listener(annealing));
        solver = annealing;
        Schedule found = annealing.solve(Schedule.of(player, estimate, near, start));
        movesTried += annealing.getMoveEvaluationCount();
        return found;
    }

    /** Moves tried in all runs that have ended. */
    long movesTried() {
        return movesTried;
    }

    /** Ends this run soon and any other at once; from any thread. */
    void stop() {
        stopped = true;
        Solver<Schedule> current = solver;
        if (current != null) {
            current.terminateEarly();
        }
    }

    private final class Listener extends PhaseLifecycleListenerAdapter<Schedule> {
        private final Solver<Schedule> starting;

        Listener(Solver<Schedule> starting) {
            this.starting = starting;
        }

        /** A solver forgets that it was told to end before it began. */
        @Override
        public void solvingStarted(SolverScope<Schedule> solverScope) {
            if (stopped) {
                starting.terminateEarly();
            }
        }

        @Override
        public void stepEnded(AbstractStepScope<Schedule> stepScope) {
            player.stepTaken();
        }
    }
}
