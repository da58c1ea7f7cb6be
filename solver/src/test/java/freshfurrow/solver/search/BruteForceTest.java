package freshfurrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The search against all 362,880 plans of a season of eight fields and two planters. */
class BruteForceTest {
    /** One to two seconds on a small machine. */
    private static final long MOVES = 20_000;

    @Test
    void theBestPlanOfAllIsFoundInTwentyOfTwentySeasons() {
        List<String> missed = LongStream.rangeClosed(1, 20)
                .parallel()
                .mapToObj(BruteForceTest::missed)
                .flatMap(Optional::stream)
                .toList();

        assertThat(missed).isEmpty();
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
        HardMediumSoftLongScore best = BruteForce.bestScore(season);
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
