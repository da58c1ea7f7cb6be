package freshfurrow.solver.search;

import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.PlanterList;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.TimelineScore;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.NavigableMap;
import java.util.TreeMap;

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

    /** The best lists as they stood after each of so many seconds: its moves and acceptance do not depend on when it ends. */
    NavigableMap<Integer, FieldLists> improve(FieldLists start, int... seconds) {
        NavigableMap<Integer, FieldLists> found = new TreeMap<>();
        for (int after : seconds) {
            found.put(after, start);
        }
        SolverConfig config = new SolverConfig()
                .withSolutionClass(Schedule.class)
                .withEntityClasses(PlanterList.class)
                .withEasyScoreCalculatorClass(TimelineScore.class)
                .withRandomSeed(seed)
                .withTerminationConfig(new TerminationConfig().withSpentLimit(Duration.ofSeconds(found.lastKey())))
                .withPhases(new LocalSearchPhaseConfig());
        LibrarySearch search = new LibrarySearch(config);
        SeasonEstimate estimate = new SeasonEstimate(season);
        search.onBetter(event -> found.tailMap((int) Math.ceil(event.getTimeMillisSpent() / 1000.0))
                .replaceAll((after, before) -> event.getNewBestSolution().fields()));
        search.run(
                Schedule.of(new ListPlayer(season), estimate, new NearFields(estimate), start), StopSignal.untilTold());
        movesTried = search.movesTried();
        return found;
    }

    long movesTried() {
        return movesTried;
    }
}
