package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import ai.timefold.solver.core.impl.localsearch.scope.LocalSearchStepScope;
import ai.timefold.solver.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import ai.timefold.solver.core.impl.phase.scope.AbstractStepScope;
import ai.timefold.solver.core.impl.solver.DefaultSolver;
import ai.timefold.solver.core.impl.solver.scope.SolverScope;
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
        DefaultSolver<Schedule> annealing =
                (DefaultSolver<Schedule>) SolverFactory.<Schedule>create(AnnealingConfig.of(seed, heat, end, mode))
                        .buildSolver();
        annealing.addEventListener(event -> onBetter.accept(
                event.getNewBestSolution().fields(), (HardMediumSoftLongScore) event.getNewBestScore()));
        annealing.addPhaseLifecycleListener(new Listener(annealing, scorer, heat.mediumScore()));
        StopSignal.Listening listening = stop.whenTold(annealing::terminateEarly);
        try {
            Schedule found = annealing.solve(Schedule.of(scorer, estimate, near, start));
            movesTried += annealing.getMoveEvaluationCount();
            return found;
        } finally {
            listening.close();
        }
    }

    /** Moves tried in all runs that have ended. */
    long movesTried() {
        return movesTried;
    }

    private final class Listener extends PhaseLifecycleListenerAdapter<Schedule> {
        private final Solver<Schedule> starting;
        private final ListScorer scorer;
        private final long mediumHeat;

        Listener(Solver<Schedule> starting, ListScorer scorer, long mediumHeat) {
            this.starting = starting;
            this.scorer = scorer;
            this.mediumHeat = mediumHeat;
        }

        /** A solver forgets that it was told to end before it began. */
        @Override
        public void solvingStarted(SolverScope<Schedule> solverScope) {
            if (stop.isSet()) {
                starting.terminateEarly();
            }
        }

        @Override
        public void stepEnded(AbstractStepScope<Schedule> stepScope) {
            double heat = mediumHeat * (1 - ((LocalSearchStepScope<Schedule>) stepScope).getTimeGradient());
            scorer.stepTaken(
                    mode == EnvironmentMode.NO_ASSERT ? (long) Math.ceil(NEVER_ACCEPTED * heat) : Long.MAX_VALUE);
        }
    }
}
