package freshfurrow.solver.independent;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.KindsOfSeason;
import freshfurrow.solver.example.OptimisingJvm;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import freshfurrow.solver.stop.StopSignal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The search of the product and the independent one, in the same time on one thread from the same first lists. Not part of the tests, as
 * its name keeps it out of them; docs/benchmarks.md says how to run it and shows a run.
 */
class IndependentBenchmark {
    private static final List<String> KINDS =
            Arrays.asList(System.getProperty("kinds", "").split(",", -1));
    private static final int FIRST_SEED = Integer.getInteger("firstSeed", 1);
    private static final int SEEDS = Integer.getInteger("seeds", 3);
    private static final Duration TIME = Duration.ofSeconds(Integer.getInteger("seconds", 30));
    /** ours, independent */
    private static final List<String> SEARCHES =
            Arrays.asList(System.getProperty("searches", "ours,independent").split(",", -1));

    @Test
    void measure() {
        OptimisingJvm.require();
        print("| season | seed | first: late, effort | ours | independent | late: ours / independent | effort |");
        print("|---|---|---|---|---|---|---|");
        for (int seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
            for (Map.Entry<String, Season> named : KindsOfSeason.all(seed).entrySet()) {
                if (KINDS.stream().anyMatch(named.getKey()::startsWith)) {
                    measure(named.getKey(), CompiledSeason.of(named.getValue()), seed);
                }
            }
        }
    }

    private static void measure(String name, CompiledSeason season, int seed) {
        List<FieldLists> starts = FirstLists.severalBest(season, StopSignal.untilTold());
        ListPlayer player = new ListPlayer(season);
        HardMediumSoftLongScore first = player.score(starts.get(0));
        HardMediumSoftLongScore ours = SEARCHES.contains("ours")
                ? player.score(new Search(season, seed, 1).improve(starts, SearchLimits.time(TIME), better -> {}))
                : first;
        HardMediumSoftLongScore independent = SEARCHES.contains("independent")
                ? player.score(new IndependentSearch(season, seed).improve(starts.get(0), TIME))
                : first;
        print(String.format(
                "| %s | %d | %s | %s | %s | %s | %.3f |",
                name,
                seed,
                text(first),
                text(ours),
                text(independent),
                independent.mediumScore() == 0
                        ? ""
                        : String.format("%.3f", (double) ours.mediumScore() / independent.mediumScore()),
                (double) ours.softScore() / independent.softScore()));
    }

    private static String text(HardMediumSoftLongScore score) {
        return String.format("%.2f, %d", -score.mediumScore() / 100.0, -score.softScore());
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
