package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import ai.timefold.solver.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import ai.timefold.solver.core.impl.phase.scope.AbstractStepScope;
import ai.timefold.solver.core.impl.solver.DefaultSolver;
import ai.timefold.solver.core.impl.solver.scope.SolverScope;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Schedule;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Makes lists better by annealing, round after round, each from the best so far and twice as long and twice as hot as the
 * one before, until a limit is reached or rounds bring nothing. A small season has many rounds in its time, of which the
 * hot ones leave a dead end; a large one has one, which cools by its end. One search for one thread; {@link #stop} may come from any.
 */
public final class Search {
    private static final long MOVES_PER_FIELD = 1_000;
    private static final int ROUNDS_IN_VAIN = 3;

    private final CompiledSeason season;
    private final long seed;
    private final EnvironmentMode mode;
    private long movesTried;
    private volatile boolean stopped;
    private volatile @Nullable Solver<Schedule> solver;

    public Search(CompiledSeason season, long seed) {
        this(season, seed, EnvironmentMode.NO_ASSERT);
    }

    Search(CompiledSeason season, long seed, EnvironmentMode mode) {
        this.season = season;
        this.seed = seed;
        this.mode = mode;
    }

    /**
     * The best lists found, {@code start} when none are better; blocks until a limit or {@link #stop}.
     *
     * @param onBetter told of better lists, on this thread
     */
    public FieldLists improve(FieldLists start, SearchLimits limits, Consumer<FieldLists> onBetter) {
        NearFields near = new NearFields(new SeasonEstimate(season));
        FieldLists best = start;
        ListPlayer player = new ListPlayer(season);
        HardMediumSoftLongScore bestScore = player.score(best);
        long roundMoves = MOVES_PER_FIELD * season.fieldCount();
        int inVain = 0;
        for (int round = 0; inVain < ROUNDS_IN_VAIN && !stopped; round++) {
            HardMediumSoftLongScore heat =
                    Temperature.of(season, near, best, seed + round).multiply(1 << round);
            Optional<TerminationConfig> end = limits.end(roundMoves, movesTried);
            if (end.isEmpty()) {
                break;
            }
            Schedule found = anneal(
                    Schedule.of(player, near, best),
                    AnnealingConfig.of(seed + round, heat, end.get(), mode),
                    player,
                    onBetter);
            inVain++;
            if (found.score().compareTo(bestScore) > 0) {
                best = found.fields();
                bestScore = found.score();
                inVain = 0;
            }
            roundMoves *= 2;
        }
        return best;
    }

    /** Moves tried so far. */
    public long movesTried() {
        return movesTried;
    }

    /** Ends the search soon. */
    public void stop() {
        stopped = true;
        Solver<Schedule> current = solver;
        if (current != null) {
            current.terminateEarly();
        }
    }

    private Schedule anneal(Schedule start, SolverConfig config, ListPlayer player, Consumer<FieldLists> onBetter) {
        DefaultSolver<Schedule> annealing =
                (DefaultSolver<Schedule>) SolverFactory.<Schedule>create(config).buildSolver();
        annealing.addEventListener(
                event -> onBetter.accept(event.getNewBestSolution().fields()));
        annealing.addPhaseLifecycleListener(new StopBeforeStart(annealing));
        annealing.addPhaseLifecycleListener(new StepKeeper(player));
        solver = annealing;
        Schedule found = annealing.solve(start);
        movesTried += annealing.getMoveEvaluationCount();
        return found;
    }

    /** Tells the player which of the lists that were tried are those to go on from. */
    private static final class StepKeeper extends PhaseLifecycleListenerAdapter<Schedule> {
        private final ListPlayer player;

        StepKeeper(ListPlayer player) {
            this.player = player;
        }

        @Override
        public void stepEnded(AbstractStepScope<Schedule> stepScope) {
            player.stepTaken();
        }
    }

    /** A solver forgets that it was told to end before it began. */
    private final class StopBeforeStart extends PhaseLifecycleListenerAdapter<Schedule> {
        private final Solver<Schedule> starting;

        StopBeforeStart(Solver<Schedule> starting) {
            this.starting = starting;
        }

        @Override
        public void solvingStarted(SolverScope<Schedule> solverScope) {
            if (stopped) {
                starting.terminateEarly();
            }
        }
    }
}
