package freshfurrow.solver.search;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.bounds.SeasonBounds;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.BenchmarkSeasons;
import freshfurrow.solver.schedule.FieldLists;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * How good the search's plans are: against the hand rule, against the solver library's own moves and acceptance, and against the
 * proven bounds. Not part of the tests, as its name keeps it out of them; docs/benchmarks.md says how to run it and shows a run.
 */
class SearchBenchmark {
    private static final String ONLY = System.getProperty("season", "");
    private static final int SEEDS = Integer.getInteger("seeds", 3);
    private static final int STOCK_S = Integer.getInteger("stock", 30);
    private static final int[] SECONDS = Arrays.stream(
                    System.getProperty("seconds", "5,30,60").split(",", -1))
            .mapToInt(Integer::parseInt)
            .toArray();
    private static final int THREADS = 2;

    @Test
    void measure() {
        print("| season | fields | planters, rigs | plan | late ha-days | unserved ha | fills | trips | wait h"
                + " | late and unserved, weighted ha-days | effort min | bound: gap | moves/s |");
        print("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        BenchmarkSeasons.all().entrySet().stream()
                .filter(season -> season.getKey().contains(ONLY))
                .forEach(SearchBenchmark::measure);
    }

    private static void measure(Map.Entry<String, Season> named) {
        Season season = named.getValue();
        CompiledSeason compiled = CompiledSeason.of(season);
        FieldLists first = FirstLists.best(compiled);
        SeasonBounds bounds = SeasonBounds.of(compiled);
        Outcome hand = Outcome.of(compiled, FirstLists.byHand(compiled), 0);
        Map<Integer, Outcome> ours = new TreeMap<>();
        for (int seconds : SECONDS) {
            ours.put(seconds, median(seed -> searched(compiled, first, seed, seconds)));
        }
        Outcome stock = median(seed -> stock(compiled, first, seed));

        String prefix = String.format(
                "| %s | %,d | %d, %d |",
                named.getKey(),
                compiled.fieldCount(),
                season.planters().size(),
                season.rigs().size());
        row(prefix, "hand rule", hand, compiled, bounds);
        row(prefix, "stock, " + STOCK_S + " s", stock, compiled, bounds);
        ours.forEach((seconds, outcome) -> row(prefix, "ours, " + seconds + " s", outcome, compiled, bounds));
    }

    private static Outcome median(LongFunction<Outcome> bySeed) {
        List<Outcome> outcomes = new ArrayList<>();
        LongStream.rangeClosed(1, SEEDS).mapToObj(bySeed).forEach(outcomes::add);
        return Outcome.median(outcomes);
    }

    private static Outcome searched(CompiledSeason season, FieldLists first, long seed, int seconds) {
        Search search = new Search(season, seed * 1_000, THREADS);
        long startNs = System.nanoTime();
        SearchLimits limits =
                SearchLimits.from(startNs, Optional.of(Duration.ofSeconds(seconds)), OptionalLong.empty());
        FieldLists found = search.improve(first, limits, better -> {});
        return Outcome.of(season, found, search.movesTried() / secondsSince(startNs));
    }

    private static Outcome stock(CompiledSeason season, FieldLists first, long seed) {
        StockSearch search = new StockSearch(season, seed);
        long startNs = System.nanoTime();
        FieldLists found = search.improve(first, Duration.ofSeconds(STOCK_S));
        return Outcome.of(season, found, search.movesTried() / secondsSince(startNs));
    }

    private static void row(String prefix, String plan, Outcome outcome, CompiledSeason compiled, SeasonBounds bounds) {
        Season season = compiled.season();
        Plan recorded = PlanRecorder.record(
                compiled, outcome.lists().ids(season), new Plan.SeasonSource("", "", "", season.units()));
        print(String.format(
                "%s %s | %,.1f | %,.1f | %,d | %,d | %,.0f | %,.1f | %,d | %s | %s |",
                prefix,
                plan,
                outcome.lateHaDays(),
                outcome.unservedHa(),
                outcome.fills(),
                outcome.waterTrips(),
                outcome.waitH(),
                outcome.lateAndUnserved(),
                -outcome.score().softScore(),
                outcome.gap(bounds.forPlan(recorded)),
                outcome.movesPerS() > 0 ? String.format("%,.0f", outcome.movesPerS()) : ""));
    }

    private static double secondsSince(long startNs) {
        return (System.nanoTime() - startNs) / 1e9;
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
