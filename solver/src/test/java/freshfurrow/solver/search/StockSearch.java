package freshfurrow.solver.search;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import ai.timefold.solver.core.impl.solver.DefaultSolver;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.TimelineScore;
import java.time.Duration;

/**
 * What the solver library does of itself with the planning model: its own local search, moves and acceptance, every move played out
 * from the season's beginning.
 */
final class StockSearch {
    private final CompiledSeason season;
    private final long seed;
    private long movesTried;

    StockSearch(CompiledSeason season, long seed) {
        this.season = season;
        this.seed = seed;
    }

    FieldLists improve(FieldLists start, Duration time) {
        SolverConfig config = new SolverConfig()
                .withSolutionClass(Schedule.class)
                .withEntityClasses(PlanterList.class)
                .withEasyScoreCalculatorClass(TimelineScore.class)
                .withRandomSeed(seed)
                .withTerminationConfig(new TerminationConfig().withSpentLimit(time))
                .withPhases(new LocalSearchPhaseConfig());
        DefaultSolver<Schedule> solver =
                (DefaultSolver<Schedule>) SolverFactory.<Schedule>create(config).buildSolver();
        SeasonEstimate estimate = new SeasonEstimate(season);
        FieldLists found = solver.solve(Schedule.of(new ListPlayer(season), estimate, new NearFields(estimate), start))
                .fields();
        movesTried = solver.getMoveEvaluationCount();
        return found;
    }

    long movesTried() {
        return movesTried;
    }
}
