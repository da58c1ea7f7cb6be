package freshfurrow.solver.search;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import freshfurrow.solver.bounds.SeasonBounds;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.BenchmarkSeasons;
import freshfurrow.solver.example.OptimisingJvm;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.stop.StopSignal;
import freshfurrow.solver.threads.Workers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * How good the search's plans are: against the hand rule, against the solver library's own moves and acceptance, and against the
 * proven bounds. Not part of the tests, as its name keeps it out of them; docs/developing/benchmarks.md says how to run it and shows a run.
 */
class SearchBenchmark {
    private static final Pattern ONLY = Pattern.compile(System.getProperty("season", ""));
    private static final int SERIES = Integer.getInteger("series", 0);
    private static final int SEEDS = Integer.getInteger("seeds", 3);
    private static final int[] SECONDS = Arrays.stream(
                    System.getProperty("seconds", "5,30,60").split(",", -1))
            .mapToInt(Integer::parseInt)
            .toArray();
    private static final int THREADS = 2;

    @Test
    void measure() {
        OptimisingJvm.require();
        print("| season | fields | planters, rigs | plan | late ha-days | unserved ha | fills | trips | wait h"
                + " | late and unserved, weighted ha-days | effort min | bound: gap | moves/s |");
        print("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        BenchmarkSeasons.series(SERIES).entrySet().stream()
                .filter(season -> ONLY.matcher(season.getKey()).find())
                .forEach(SearchBenchmark::measure);
    }

    private static void measure(Map.Entry<String, Season> named) {
        Season season = named.getValue();
        CompiledSeason compiled = CompiledSeason.of(season);
        List<FieldLists> starts = FirstLists.severalBest(compiled, StopSignal.untilTold());
        SeasonBounds bounds = SeasonBounds.of(compiled);
        FieldLists byHand = FirstLists.byHand(compiled);
        Outcome hand = Outcome.of(compiled, byHand, 0);
        List<Map<Integer, List<Outcome>>> stock = stock(compiled, List.of(byHand, starts.get(0)));
        Map<Integer, List<Outcome>> ours = new TreeMap<>();
        for (int seconds : SECONDS) {
            ours.put(
                    seconds,
                    seeds().mapToObj(seed -> searched(compiled, starts, seed, seconds))
                            .toList());
        }

        String prefix = String.format(
                "| %s | %,d | %d, %d |",
                named.getKey(),
                compiled.fieldCount(),
                season.applicators().size(),
                season.rigs().size());
        row(prefix, "hand rule", hand, compiled, bounds);
        rows(prefix, "stock from there", stock.get(0), compiled, bounds);
        row(prefix, "first lists", Outcome.of(compiled, starts.get(0), 0), compiled, bounds);
        rows(prefix, "stock from there", stock.get(1), compiled, bounds);
        rows(prefix, "ours", ours, compiled, bounds);
    }

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, SEEDS);
    }

    private static Outcome searched(CompiledSeason season, List<FieldLists> starts, long seed, int seconds) {
        Search search = new Search(season, seed * 1_000, THREADS);
        long startNs = System.nanoTime();
        SearchLimits limits = SearchLimits.time(Duration.ofSeconds(seconds));
        FieldLists found = search.improve(starts, limits, better -> {});
        return Outcome.of(season, found, search.movesTried() / secondsSince(startNs));
    }

    /** From each of the starts; one after another on each core, as it uses only one. */
    private static List<Map<Integer, List<Outcome>>> stock(CompiledSeason season, List<FieldLists> starts) {
        try (Workers workers = new Workers(THREADS, "stock")) {
            List<Supplier<Map<Integer, Outcome>>> runs = starts.stream()
                    .flatMap(start -> seeds().mapToObj(
                                    seed -> (Supplier<Map<Integer, Outcome>>) () -> stock(season, start, seed)))
                    .toList();
            List<Map<Integer, Outcome>> found = workers.each(runs, Supplier::get);
            return IntStream.range(0, starts.size())
                    .mapToObj(start -> bySeconds(found.subList(start * SEEDS, (start + 1) * SEEDS)))
                    .toList();
        }
    }

    private static Map<Integer, List<Outcome>> bySeconds(List<Map<Integer, Outcome>> seeds) {
        Map<Integer, List<Outcome>> bySeconds = new TreeMap<>();
        seeds.forEach(found -> found.forEach((seconds, outcome) ->
                bySeconds.computeIfAbsent(seconds, none -> new ArrayList<>()).add(outcome)));
        return bySeconds;
    }

    private static Map<Integer, Outcome> stock(CompiledSeason season, FieldLists first, long seed) {
        StockSearch search = new StockSearch(season, seed);
        long startNs = System.nanoTime();
        Map<Integer, FieldLists> found = search.improve(first, SECONDS);
        double movesPerS = search.movesTried() / secondsSince(startNs);
        Map<Integer, Outcome> outcomes = new TreeMap<>();
        found.forEach((seconds, lists) -> outcomes.put(seconds, Outcome.of(season, lists, movesPerS)));
        return outcomes;
    }

    private static void rows(
            String prefix,
            String plan,
            Map<Integer, List<Outcome>> bySeconds,
            CompiledSeason compiled,
            SeasonBounds bounds) {
        bySeconds.forEach((seconds, outcomes) ->
                row(prefix, plan + ", " + seconds + " s", Outcome.median(outcomes), compiled, bounds));
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
