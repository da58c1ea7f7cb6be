package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/**
 * How fast the search is and how much better than the hand rule. Not part of the tests, as its name keeps it out of them;
 * docs/benchmarks.md says how to run it and shows a run.
 */
class SearchBenchmark {
    private static final long SEED = 1;

    @Test
    void measure() {
        Path scenarios = Path.of("..", "scenarios");
        Map<String, Season> seasons = new LinkedHashMap<>();
        seasons.put("spring", read(scenarios.resolve("spring")));
        seasons.put("cooperative", read(scenarios.resolve("cooperative")));

        print("| season | plan | time s | moves/s | late and unserved, ha-days | effort, min |");
        print("|---|---|---|---|---|---|");
        seasons.forEach(SearchBenchmark::measure);
    }

    private static Season read(Path folder) {
        Reading reading = SeasonFiles.read(folder, List.of());
        if (reading instanceof Reading.Valid valid) {
            return valid.season();
        }
        throw new IllegalStateException(folder + " does not read: " + reading);
    }

    private static void measure(String name, Season season) {
        CompiledSeason compiled = CompiledSeason.of(season);
        row(name, "hand rule", compiled, FirstLists.byHand(compiled), 0, 0);
        long startNs = System.nanoTime();
        FieldLists first = FirstLists.best(compiled);
        row(name, "first lists", compiled, first, secondsSince(startNs), 0);
        for (int seconds : new int[] {5, 30}) {
            Search search = new Search(compiled, SEED, 2);
            long searchNs = System.nanoTime();
            SearchLimits limits =
                    SearchLimits.from(searchNs, Optional.of(Duration.ofSeconds(seconds)), OptionalLong.empty());
            FieldLists found = search.improve(first, limits, better -> {});
            double took = secondsSince(searchNs);
            row(name, "search, " + seconds + " s", compiled, found, took, search.movesTried() / took);
        }
    }

    private static void row(
            String name, String plan, CompiledSeason season, FieldLists lists, double seconds, double movesPerS) {
        HardMediumSoftLongScore score = new ListPlayer(season).score(lists);
        print(String.format(
                "| %s | %s | %.1f | %s | %,.1f | %,d |",
                name,
                plan,
                seconds,
                movesPerS > 0 ? String.format("%,.0f", movesPerS) : "",
                -score.mediumScore() / 100.0,
                -score.softScore()));
    }

    private static double secondsSince(long startNs) {
        return (System.nanoTime() - startNs) / 1e9;
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
