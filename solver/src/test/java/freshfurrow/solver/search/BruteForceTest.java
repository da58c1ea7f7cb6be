package freshfurrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.example.Tries;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** The search against all 362,880 plans of a season of eight fields and two planters. */
class BruteForceTest {
    /** Two to three seconds on a small machine. */
    private static final long MOVES = 30_000;

    @Test
    void theBestPlanOfAllIsFoundInEveryOneOfTwentySeasons() {
        List<String> missed = LongStream.rangeClosed(1, Tries.of(20))
                .parallel()
                .mapToObj(BruteForceTest::missed)
                .flatMap(Optional::stream)
                .toList();

        assertThat(missed).isEmpty();
    }

    /** What begins alike is played once: the same best score as when each of the 5,040 plans is played from its beginning. */
    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6})
    void whatIsSharedAndStoppedEarlyChangesNotTheBestScore(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.hurried(6, 2, seed));

        assertThat(BruteForce.best(season)).isEqualTo(new BruteForce.Result(eachFromItsBeginning(season), 5_040));
    }

    private static HardMediumSoftLongScore eachFromItsBeginning(CompiledSeason season) {
        List<List<Integer>> orders = List.of(List.of());
        for (int field = 0; field < season.fieldCount(); field++) {
            int next = field;
            orders = orders.stream()
                    .flatMap(order -> IntStream.rangeClosed(0, order.size()).mapToObj(place -> {
                        List<Integer> longer = new ArrayList<>(order);
                        longer.add(place, next);
                        return longer;
                    }))
                    .toList();
        }
        ListPlayer player = new ListPlayer(season);
        return orders.stream()
                .flatMap(order -> IntStream.rangeClosed(0, order.size())
                        .mapToObj(split ->
                                new FieldLists(List.of(order.subList(0, split), order.subList(split, order.size())))))
                .map(player::play)
                .map(played -> HardMediumSoftLongScore.of(played.hard(), played.medium(), played.soft()))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Optional<String> missed(long seed) {
        return missed(seed, () -> SearchLimits.moves(MOVES));
    }

    /**
     * What the search found in the season of that seed in place of the best; empty when it found the best.
     *
     * @param limits asked when the search begins
     */
    static Optional<String> missed(long seed, Supplier<SearchLimits> limits) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.hurried(8, 2, seed));
        BruteForce.Result all = BruteForce.best(season);
        assertThat(all.plans()).isEqualTo(362_880);
        HardMediumSoftLongScore best = all.score();
        // else a plan that leaves a field out could be better still, which the brute force does not try
        assertThat(-best.mediumScore()).isLessThan(leastUnserved(season));
        FieldLists found = new Search(season, seed, 2).improve(FirstLists.best(season), limits.get(), better -> {});
        HardMediumSoftLongScore score = new ListPlayer(season).score(found);
        assertThat(score).as("better than the best: the score is wrong").isLessThanOrEqualTo(best);
        return score.equals(best) ? Optional.empty() : Optional.of("season " + seed + ": " + score + ", not " + best);
    }

    /** What the smallest field costs when left out, hundredths of ha-days. */
    private static long leastUnserved(CompiledSeason compiled) {
        Season season = compiled.season();
        double smallestHa =
                season.fields().stream().mapToDouble(Field::areaHa).min().orElseThrow();
        return (long) (smallestHa * (season.days() + 1) * 100);
    }
}
