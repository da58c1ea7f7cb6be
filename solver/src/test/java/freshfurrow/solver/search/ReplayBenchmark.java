package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import ai.timefold.solver.core.impl.phase.event.PhaseLifecycleListenerAdapter;
import ai.timefold.solver.core.impl.phase.scope.AbstractStepScope;
import ai.timefold.solver.core.impl.solver.DefaultSolver;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.TimelineScore;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/**
 * Moves tried in a second when each is played out from the season's beginning, and when it is replayed from a checkpoint; and by
 * the whole search on two threads. Not part of the tests, as its name keeps it out of them; docs/benchmarks.md says how to run it.
 */
class ReplayBenchmark {
    private static final int ROUNDS = 3;
    /** 2,000 acres: a field capacity of 13 ac/h on ten hours of fifteen workable days. */
    private static final int FIELDS_A_PLANTER = 50;

    private static final int FIELDS_A_RIG = 100;
    private static final long ROUND_MS = Long.getLong("ms", 3_000);

    @Test
    void measure() {
        print("| fields | fills | planters, rigs | from the beginning, moves/s | from a checkpoint, moves/s | ratio"
                + " | us a move and field | two threads, moves/s | heap, MB |");
        print("|---|---|---|---|---|---|---|---|---|");
        for (int fields : new int[] {50, 200, 1_000, 2_000}) {
            measure(fields);
        }
    }

    private static void measure(int fields) {
        int planters = Math.max(2, fields / FIELDS_A_PLANTER);
        int rigs = Math.max(1, fields / FIELDS_A_RIG);
        Season season = InventedSeason.fortyAcreFields(fields, planters, rigs, Math.sqrt(fields) * 1_700, 1);
        CompiledSeason compiled = CompiledSeason.of(season);
        FieldLists start = FirstLists.best(compiled);
        double full = 0;
        double replayed = 0;
        for (int round = 0; round <= ROUNDS; round++) {
            double fullNow = movesPerS(compiled, start, false);
            double replayedNow = movesPerS(compiled, start, true);
            if (round > 0) {
                full += fullNow / ROUNDS;
                replayed += replayedNow / ROUNDS;
            }
        }
        Search search = new Search(compiled, 1, 2);
        long startNs = System.nanoTime();
        search.improve(
                start,
                SearchLimits.from(startNs, Optional.of(Duration.ofMillis(2 * ROUND_MS)), OptionalLong.empty()),
                better -> {});
        double both = search.movesTried() / ((System.nanoTime() - startNs) / 1e9);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        print(String.format(
                "| %,d | %,d | %d, %d | %,.0f | %,.0f | %.2f | %.2f | %,.0f | %,d |",
                fields,
                new ListPlayer(compiled).play(start).fills(),
                planters,
                rigs,
                full,
                replayed,
                replayed / full,
                1e6 / replayed / fields,
                both,
                (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000));
    }

    private static double movesPerS(CompiledSeason season, FieldLists start, boolean replay) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        NearFields near = new NearFields(estimate);
        ListPlayer player = new ListPlayer(season);
        HardMediumSoftLongScore heat = Temperature.of(player, near, start, 1);
        SolverConfig config = AnnealingConfig.of(
                1, heat, new TerminationConfig().withMillisecondsSpentLimit(ROUND_MS), EnvironmentMode.NO_ASSERT);
        if (!replay) {
            config.setScoreDirectorFactoryConfig(
                    new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(TimelineScore.class));
        }
        DefaultSolver<Schedule> solver =
                (DefaultSolver<Schedule>) SolverFactory.<Schedule>create(config).buildSolver();
        solver.addPhaseLifecycleListener(new PhaseLifecycleListenerAdapter<>() {
            @Override
            public void stepEnded(AbstractStepScope<Schedule> stepScope) {
                player.stepTaken();
            }
        });
        solver.solve(Schedule.of(player, estimate, near, start));
        return solver.getMoveEvaluationSpeed();
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
