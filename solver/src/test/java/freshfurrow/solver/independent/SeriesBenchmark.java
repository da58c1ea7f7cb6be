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
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How far the product's search in a short time, with several seeds, stays behind the best that it finds in ten times as long and that the independent
 * search finds in longer still. Not part of the tests, as its name keeps it out of them; docs/developing/benchmarks.md says how to run it.
 */
class SeriesBenchmark {
    private static final int SEASONS = Integer.getInteger("seasons", 24);
    private static final int SKIPPED = Integer.getInteger("skip", 0);
    private static final int SEEDS = Integer.getInteger("seeds", 3);
    private static final Duration SHORT = Duration.ofSeconds(Integer.getInteger("seconds", 30));
    private static final Duration LONG = SHORT.multipliedBy(10);
    private static final Duration INDEPENDENT =
            SHORT.multipliedBy(Integer.getInteger("independentPercent", 1_333)).dividedBy(100);

    private static final double ONE_PER_CENT = 1.01;

    private record Named(String name, CompiledSeason season) {}

    @Test
    void measure() {
        OptimisingJvm.require();
        print("| season | each seed | ours, ten times as long | independent | worst seed / best |");
        print("|---|---|---|---|---|");
        List<Named> seasons = seasons();
        int within = 0;
        for (int i = 0; i < seasons.size(); i += 2) {
            List<Named> pair = seasons.subList(i, Math.min(i + 2, seasons.size()));
            List<List<HardMediumSoftLongScore>> ours =
                    pair.stream().map(SeriesBenchmark::ours).toList();
            List<HardMediumSoftLongScore> independent = pair.parallelStream()
                    .map(named -> independent(named.season()))
                    .toList();
            for (int j = 0; j < pair.size(); j++) {
                within += row(pair.get(j).name(), ours.get(j), independent.get(j)) ? 1 : 0;
            }
        }
        print("within 1 %: " + within + " of " + seasons.size());
    }

    /** One of each kind, then of each kind another one. */
    private static List<Named> seasons() {
        return LongStream.rangeClosed(1, 2)
                .boxed()
                .flatMap(seed -> KindsOfSeason.all(seed).entrySet().stream()
                        .map((Map.Entry<String, Season> kind) ->
                                new Named(kind.getKey() + ", " + seed, CompiledSeason.of(kind.getValue()))))
                .limit(SEASONS)
                .skip(SKIPPED)
                .toList();
    }

    /** For each seed, and last in ten times as long. */
    private static List<HardMediumSoftLongScore> ours(Named named) {
        CompiledSeason season = named.season();
        List<FieldLists> starts = FirstLists.severalBest(season, StopSignal.untilTold());
        ListPlayer player = new ListPlayer(season);
        List<HardMediumSoftLongScore> scores = new ArrayList<>();
        for (long seed = 1; seed <= SEEDS + 1; seed++) {
            Duration time = seed <= SEEDS ? SHORT : LONG;
            scores.add(
                    player.score(new Search(season, seed, 2).improve(starts, SearchLimits.time(time), better -> {})));
        }
        return scores;
    }

    private static HardMediumSoftLongScore independent(CompiledSeason season) {
        FieldLists start =
                FirstLists.severalBest(season, StopSignal.untilTold()).get(0);
        return new ListPlayer(season).score(new IndependentSearch(season, 1).improve(start, INDEPENDENT));
    }

    private static boolean row(String name, List<HardMediumSoftLongScore> ours, HardMediumSoftLongScore independent) {
        List<HardMediumSoftLongScore> seeds = ours.subList(0, SEEDS);
        HardMediumSoftLongScore longer = ours.get(SEEDS);
        HardMediumSoftLongScore best = Collections.max(
                Stream.concat(ours.stream(), Stream.of(independent)).toList());
        HardMediumSoftLongScore worst = Collections.min(seeds);
        double ratio = ratio(worst, best);
        print(String.format(
                "| %s | %s | %s | %s | %.3f |",
                name,
                String.join("; ", seeds.stream().map(SeriesBenchmark::text).toList()),
                text(longer),
                text(independent),
                ratio));
        return ratio <= ONE_PER_CENT;
    }

    /** Of what is late, unplanted and untreated as weighed; where that is as good or none, of effort. */
    private static double ratio(HardMediumSoftLongScore worst, HardMediumSoftLongScore best) {
        boolean byMedium = worst.mediumScore() != best.mediumScore() && best.mediumScore() != 0;
        return byMedium
                ? (double) worst.mediumScore() / best.mediumScore()
                : worst.mediumScore() == best.mediumScore()
                        ? (double) worst.softScore() / best.softScore()
                        : Double.POSITIVE_INFINITY;
    }

    private static String text(HardMediumSoftLongScore score) {
        return String.format("%,.2f / %,d", -score.mediumScore() / 100.0, -score.softScore());
    }

    @SuppressWarnings("SystemOut")
    private static void print(String line) {
        System.out.println(line);
    }
}
