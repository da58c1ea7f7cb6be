package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.heuristic.selector.list.SubListSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.MoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListSwapMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.SubListChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.SubListSwapMoveSelectorConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.monitoring.MonitoringConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.solver.schedule.ListScore;
import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.TimelineScore;
import java.util.List;

/** One annealing as the solver library is told of it: which moves, how often each, which are accepted, when it ends. */
final class AnnealingConfig {
    private static final int LONGEST_RUN = 12;

    private AnnealingConfig() {}

    /**
     * @param start the score by which an accepted move may worsen the lists at the start; falls to 0 at the end
     * @param mayGoWithout whether each field has a visit without extract too
     */
    static SolverConfig of(
            long seed,
            HardMediumSoftLongScore start,
            TerminationConfig end,
            EnvironmentMode mode,
            boolean mayGoWithout) {
        return new SolverConfig()
                .withSolutionClass(Schedule.class)
                .withEntityClasses(PlanterList.class)
                .withScoreDirectorFactory(score(mode))
                .withEnvironmentMode(mode)
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withRandomSeed(seed)
                .withTerminationConfig(end)
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(moves(mayGoWithout))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig()
                                .withSimulatedAnnealingStartingTemperature(start.toString()))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
    }

    /** Replayed scores, held against those of full runs when the solver asserts anything. */
    private static ScoreDirectorFactoryConfig score(EnvironmentMode mode) {
        ScoreDirectorFactoryConfig replay =
                new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(ListScore.class);
        return mode == EnvironmentMode.NO_ASSERT
                ? replay
                : replay.withAssertionScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(TimelineScore.class));
    }

    private static UnionMoveSelectorConfig moves(boolean mayGoWithout) {
        ListChangeMoveSelectorConfig change = new ListChangeMoveSelectorConfig();
        ListSwapMoveSelectorConfig swap = new ListSwapMoveSelectorConfig();
        if (mayGoWithout) {
            change.setFilterClass(LibrarySearch.EachFieldOnce.class);
            swap.setFilterClass(LibrarySearch.EachFieldOnce.class);
        }
        return new UnionMoveSelectorConfig()
                .withMoveSelectors(
                        often(
                                8,
                                new MoveIteratorFactoryConfig()
                                        .withMoveIteratorFactoryClass(LibrarySearch.NearMoves.class)),
                        often(2, change),
                        often(1, swap),
                        often(
                                1,
                                new SubListChangeMoveSelectorConfig()
                                        .withSelectReversingMoveToo(true)
                                        .withSubListSelectorConfig(run())),
                        often(
                                1,
                                new SubListSwapMoveSelectorConfig()
                                        .withSelectReversingMoveToo(true)
                                        .withSubListSelectorConfig(run())));
    }

    private static SubListSelectorConfig run() {
        return new SubListSelectorConfig().withMinimumSubListSize(2).withMaximumSubListSize(LONGEST_RUN);
    }

    private static <M extends MoveSelectorConfig<M>> M often(double weight, M moves) {
        return moves.withFixedProbabilityWeight(weight);
    }
}
