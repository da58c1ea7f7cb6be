package freshfurrow.solver.search;

import freshfurrow.solver.example.OptimisingJvm;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * In how many of twenty seasons of eight fields and two planters three seconds of search find the best of all plans. Not part of
 * the tests, as its name keeps it out of them; docs/developing/benchmarks.md shows a run.
 */
class SmallSeasonBenchmark {
    private static final int SEASONS = 20;
    private static final Duration TIME = Duration.ofSeconds(3);

    @Test
    @SuppressWarnings("SystemOut")
    void measure() {
        OptimisingJvm.require();
        int best = 0;
        for (long seed = 1; seed <= SEASONS; seed++) {
            Optional<String> missed = BruteForceTest.missed(seed, () -> SearchLimits.time(TIME));
            best += missed.isEmpty() ? 1 : 0;
            missed.ifPresent(System.out::println);
        }
        System.out.println(
                best + " of " + SEASONS + " seasons: the best of all plans within " + TIME.toSeconds() + " s");
    }
}
