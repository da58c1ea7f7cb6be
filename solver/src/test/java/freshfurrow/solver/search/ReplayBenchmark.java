package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.estimate.Stops;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.example.OptimisingJvm;
import freshfurrow.solver.schedule.EstimatedLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.ListScorer;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.ScreenedLists;
import freshfurrow.solver.schedule.TimelineScore;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Workers;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Moves tried in a second when each is played out from the season's beginning, and when it is replayed from a checkpoint; and by
 * the whole search on two threads. Not part of the tests, as its name keeps it out of them; docs/developing/benchmarks.md says how to run it.
 */
class ReplayBenchmark {
    private static final int ROUNDS = 3;
    /** 2,000 acres: a field capacity of 13 ac/h on ten hours of fifteen workable days. */
    private static final int FIELDS_A_PLANTER = 50;

    private static final int FIELDS_A_RIG = 100;
    private static final long ROUND_MS = Long.getLong("ms", 3_000);

    @Test
    void measure() {
        OptimisingJvm.require();
        print("| fields | fills | planters, rigs | from the beginning, moves/s | from a checkpoint, moves/s | ratio"
                + " | us a move and field | two threads, moves/s | by the estimate, moves/s | heap, MB |");
        print("|---|---|---|---|---|---|---|---|---|---|");
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
            double fullNow = movesPerS(compiled, start, new ListPlayer(compiled), false);
            double replayedNow = movesPerS(compiled, start, new ListPlayer(compiled), true);
            if (round > 0) {
                full += fullNow / ROUNDS;
                replayed += replayedNow / ROUNDS;
            }
        }
        double both = onTwoThreads(compiled, start);
        double estimated = movesPerS(compiled, start, estimate(compiled, start), true);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        print(String.format(
                "| %,d | %,d | %d, %d | %,.0f | %,.0f | %.2f | %.2f | %,.0f | %,.0f | %,d |",
                fields,
                new ListPlayer(compiled).play(start).fills(),
                planters,
                rigs,
                full,
                replayed,
                replayed / full,
                1e6 / replayed / fields,
                both,
                estimated,
                (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000));
    }

    private static EstimatedLists estimate(CompiledSeason season, FieldLists lists) {
        Stops stops = new Stops(season);
        stops.learn(lists.orders(season.season()));
        return new EstimatedLists(season, new SeasonEstimate(season), stops);
    }

    /** Two annealings beside one another as the search has them, which play out only what the estimate does not dismiss. */
    private static double onTwoThreads(CompiledSeason season, FieldLists start) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        NearFields near = new NearFields(estimate);
        HardMediumSoftLongScore heat = Temperature.of(new ListPlayer(season), near, start, 1, StopSignal.untilTold());
        List<Annealing> annealings = Stream.generate(() -> new Annealing(
                        estimate, near, EnvironmentMode.NO_ASSERT, StopSignal.untilTold(), (lists, score) -> {}))
                .limit(2)
                .toList();
        long startNs = System.nanoTime();
        try (Workers workers = new Workers(2, "benchmark")) {
            workers.each(
                    annealings,
                    annealing -> annealing.run(
                            new ScreenedLists(
                                    new ListPlayer(season),
                                    estimate(season, start),
                                    heat.multiply(ScreenedAnnealing.PLAYED_OUT_TO)),
                            start,
                            1,
                            heat,
                            new TerminationConfig().withMillisecondsSpentLimit(2 * ROUND_MS)));
        }
        double seconds = (System.nanoTime() - startNs) / 1e9;
        return annealings.stream().mapToLong(Annealing::movesTried).sum() / seconds;
    }

    private static double movesPerS(
            CompiledSeason season, FieldLists start, ListScorer scorer, boolean fromCheckpoint) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        NearFields near = new NearFields(estimate);
        HardMediumSoftLongScore heat = Temperature.of(scorer, near, start, 1, StopSignal.untilTold());
        SolverConfig config = AnnealingConfig.of(
                1,
                heat,
                new TerminationConfig().withMillisecondsSpentLimit(ROUND_MS),
                EnvironmentMode.NO_ASSERT,
                false);
        if (!fromCheckpoint) {
            config.setScoreDirectorFactoryConfig(
                    new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(TimelineScore.class));
        }
        LibrarySearch search = new LibrarySearch(config);
        search.onStep(done -> scorer.stepTaken(Long.MAX_VALUE));
        long startNs = System.nanoTime();
        search.run(Schedule.of(scorer, estimate, near, start), StopSignal.untilTold());
        return search.movesTried() / ((System.nanoTime() - startNs) / 1e9);
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
