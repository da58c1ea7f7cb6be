package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.api.solver.event.BestSolutionChangedEvent;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.impl.domain.variable.ListVariableStateSupply;
import ai.timefold.solver.core.impl.domain.variable.descriptor.ListVariableDescriptor;
import ai.timefold.solver.core.impl.heuristic.move.CompositeMove;
import ai.timefold.solver.core.impl.heuristic.move.Move;
import ai.timefold.solver.core.impl.heuristic.move.NoChangeMove;
import ai.timefold.solver.core.impl.heuristic.selector.common.decorator.SelectionFilter;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import ai.timefold.solver.core.impl.heuristic.selector.move.generic.list.ListAssignMove;
import ai.timefold.solver.core.impl.heuristic.selector.move.generic.list.ListChangeMove;
import ai.timefold.solver.core.impl.heuristic.selector.move.generic.list.ListSwapMove;
import ai.timefold.solver.core.impl.heuristic.selector.move.generic.list.ListUnassignMove;
import ai.timefold.solver.core.impl.heuristic.selector.move.generic.list.SubListChangeMove;
import ai.timefold.solver.core.impl.heuristic.selector.move.generic.list.kopt.TwoOptListMove;
import ai.timefold.solver.core.impl.localsearch.scope.LocalSearchStepScope;
import ai.timefold.solver.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import ai.timefold.solver.core.impl.phase.scope.AbstractStepScope;
import ai.timefold.solver.core.impl.score.director.InnerScoreDirector;
import ai.timefold.solver.core.impl.solver.DefaultSolver;
import ai.timefold.solver.core.impl.solver.scope.SolverScope;
import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.Visit;
import freshfurrow.solver.stop.StopSignal;
import java.util.Iterator;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;

/**
 * One run of the solver library. The library's inside is used in this file and in no other: what its next version changes there is
 * to be mended here.
 */
final class LibrarySearch {
    private final DefaultSolver<Schedule> solver;

    LibrarySearch(SolverConfig config) {
        solver =
                (DefaultSolver<Schedule>) SolverFactory.<Schedule>create(config).buildSolver();
    }

    void onBetter(Consumer<BestSolutionChangedEvent<Schedule>> listener) {
        solver.addEventListener(listener::accept);
    }

    /** Has a listener told of each step how much of the search is over, 0 to 1. */
    void onStep(DoubleConsumer listener) {
        solver.addPhaseLifecycleListener(new PhaseLifecycleListenerAdapter<>() {
            @Override
            public void stepEnded(AbstractStepScope<Schedule> step) {
                listener.accept(((LocalSearchStepScope<Schedule>) step).getTimeGradient());
            }
        });
    }

    /** The best of the schedules that it comes by, {@code start} among them. */
    Schedule run(Schedule start, StopSignal stop) {
        solver.addPhaseLifecycleListener(new EndBeforeTheBeginning(solver, stop));
        StopSignal.Listening listening = stop.whenTold(solver::terminateEarly);
        try {
            return solver.solve(start);
        } finally {
            listening.close();
        }
    }

    /** Moves tried in a run that has ended. */
    long movesTried() {
        return solver.getMoveEvaluationCount();
    }

    /** The score of the best schedule that an event tells of. */
    static HardMediumSoftLongScore score(BestSolutionChangedEvent<Schedule> event) {
        return (HardMediumSoftLongScore) event.getNewBestScore();
    }

    /** A solver forgets that it was told to end before it began. */
    private static final class EndBeforeTheBeginning extends PhaseLifecycleListenerAdapter<Schedule> {
        private final DefaultSolver<Schedule> starting;
        private final StopSignal stop;

        EndBeforeTheBeginning(DefaultSolver<Schedule> starting, StopSignal stop) {
            this.starting = starting;
            this.stop = stop;
        }

        @Override
        public void solvingStarted(SolverScope<Schedule> scope) {
            if (stop.isSet()) {
                starting.terminateEarly();
            }
        }
    }

    /** Random moves that bring together fields that are near by road or in their windows. */
    public static final class NearMoves implements MoveIteratorFactory<Schedule, Move<Schedule>> {
        @Override
        public long getSize(ScoreDirector<Schedule> director) {
            long fields = director.getWorkingSolution().visits().size();
            return fields * fields;
        }

        @Override
        public Iterator<Move<Schedule>> createOriginalMoveIterator(ScoreDirector<Schedule> director) {
            throw new UnsupportedOperationException("near moves are random");
        }

        @Override
        public Iterator<Move<Schedule>> createRandomMoveIterator(ScoreDirector<Schedule> director, Random random) {
            Inside inside = new Inside((InnerScoreDirector<Schedule, ?>) director);
            return new NearMoveIterator<>(inside, inside, random);
        }
    }

    /** Refuses moves that put a visit into a list while the other one of its field stands in one, or that must not stand there. */
    public static final class EachFieldOnce implements SelectionFilter<Schedule, Move<Schedule>> {
        @Override
        public boolean accept(ScoreDirector<Schedule> director, Move<Schedule> move) {
            Inside inside = new Inside((InnerScoreDirector<Schedule, ?>) director);
            return move.getPlanningValues().stream()
                    .filter(Visit.class::isInstance)
                    .map(Visit.class::cast)
                    .allMatch(visit -> inside.listOf(visit) != null
                            || (inside.listOf(inside.otherOf(visit)) == null
                                    && (!visit.isWithoutExtract()
                                            || inside.schedule().season().mayGoWithout(visit.field()))));
        }
    }

    /** Positions as the library keeps them, and its own moves. */
    private static final class Inside implements Positions, ListMoves<Move<Schedule>> {
        private final Schedule schedule;
        private final ListVariableDescriptor<Schedule> variable;
        private final ListVariableStateSupply<Schedule, Object, Object> state;

        Inside(InnerScoreDirector<Schedule, ?> director) {
            schedule = director.getWorkingSolution();
            variable = director.getSolutionDescriptor().getListVariableDescriptor();
            state = director.getListVariableStateSupply(variable);
        }

        @Override
        public Schedule schedule() {
            return schedule;
        }

        @Override
        public @Nullable PlanterList listOf(Visit visit) {
            return (PlanterList) state.getInverseSingleton(visit);
        }

        @Override
        public int indexOf(Visit visit) {
            return state.getIndex(visit);
        }

        @Override
        public Move<Schedule> none() {
            return NoChangeMove.getInstance();
        }

        @Override
        public Move<Schedule> assign(Visit visit, PlanterList to, int index) {
            return new ListAssignMove<>(variable, visit, to, index);
        }

        @Override
        public Move<Schedule> replace(PlanterList list, int index, Visit by) {
            return CompositeMove.buildMove(
                    new ListUnassignMove<>(variable, list, index), new ListAssignMove<>(variable, by, list, index));
        }

        @Override
        public Move<Schedule> change(PlanterList from, int fromIndex, PlanterList to, int index) {
            return new ListChangeMove<>(variable, from, fromIndex, to, index);
        }

        @Override
        public Move<Schedule> changeRun(
                PlanterList from, int fromIndex, int run, PlanterList to, int index, boolean turned) {
            return new SubListChangeMove<>(variable, from, fromIndex, run, to, index, turned);
        }

        @Override
        public Move<Schedule> swap(PlanterList one, int oneIndex, PlanterList other, int otherIndex) {
            return new ListSwapMove<>(variable, one, oneIndex, other, otherIndex);
        }

        @Override
        public Move<Schedule> turn(PlanterList list, int begin, int end) {
            return new TwoOptListMove<>(variable, list, list, begin, end);
        }

        @Override
        public Move<Schedule> exchangeRests(PlanterList one, int oneRest, PlanterList other, int otherRest) {
            return new TwoOptListMove<>(variable, one, other, oneRest, otherRest);
        }
    }
}
