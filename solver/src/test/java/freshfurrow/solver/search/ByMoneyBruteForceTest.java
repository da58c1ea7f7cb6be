package freshfurrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.example.Tries;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.bounds.Enumeration;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Scoring;
import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** The search by money against all plans of small seasons. */
class ByMoneyBruteForceTest {
    private static final long MOVES = 20_000;
    private static final long FEW_MOVES = 2_000;

    /** All 362,880 plans with every field, where leaving one out costs more than anything else. */
    @Test
    void noPlanIsCheaperInAnyOfTwentySeasons() {
        List<String> missed = LongStream.rangeClosed(1, Tries.of(20))
                .parallel()
                .mapToObj(seed -> missed(seed, 8, costs(10_000)))
                .flatMap(Optional::stream)
                .toList();

        assertThat(missed).isEmpty();
    }

    private static Optional<String> missed(long seed, int fields, Costs costs) {
        CompiledSeason season = season(seed, fields, costs);
        BruteForce.Result all = BruteForce.best(season);
        HardMediumSoftLongScore score = searched(season, seed);
        assertThat(score).as("cheaper than the cheapest").isLessThanOrEqualTo(all.score());
        return score.equals(all.score())
                ? Optional.empty()
                : Optional.of("season " + seed + ": " + score + ", not " + all.score());
    }

    /** All plans, those that leave fields out among them, where that may be the cheapest. */
    @Test
    void fieldsAreLeftOutWhereThatIsCheapest() {
        int leftOut = 0;
        for (long seed = 1; seed <= 20; seed++) {
            CompiledSeason season = season(seed, 6, costs(16));
            FieldLists best = Enumeration.best(season, StopSignal.untilTold()).orElseThrow();
            leftOut += best.byPlanter().stream().mapToInt(List::size).sum() < 6 ? 1 : 0;

            assertThat(searched(season, seed)).as("season " + seed).isEqualTo(new ListPlayer(season).score(best));
        }
        assertThat(leftOut).isGreaterThan(5);
    }

    /** With prices ten times as high the same steps and the same seed lead to the same plan, and it costs ten times as much. */
    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8})
    void inAnotherCurrencyThePlanIsTheSame(long seed) {
        CompiledSeason season = season(seed, 14, costs(200));
        CompiledSeason dearer = season(seed, 14, times(10, costs(200)));
        FieldLists found = found(season, seed, FEW_MOVES);

        assertThat(found(dearer, seed, FEW_MOVES)).isEqualTo(found);
        assertThat((double) new ListPlayer(dearer).score(found).mediumScore())
                .isCloseTo(10.0 * new ListPlayer(season).score(found).mediumScore(), within(11.0));
    }

    /** A price of 0 is no price: what is late costs nothing in one season and is not priced in the other, and so on. */
    @ParameterizedTest
    @Seeds({1, 2, 3})
    void aPriceOfNothingIsNoPrice(long seed) {
        Costs only = new Costs(Optional.empty(), 24, 0, 0, 0, 0, 500, 0, 0, 0, Map.of());
        CompiledSeason season = season(seed, 14, only);
        FieldLists found = found(season, seed, FEW_MOVES);
        // as the timeline counts it, by its own hand
        Timeline played = new ListPlayer(season).play(found);

        assertThat((double) -played.medium())
                .isCloseTo(1e6 * (24 * played.workS() / 3600.0 + 500 * played.unservedDm2() / 1e6), within(1.0));
    }

    /** FULL_ASSERT throws when a move and its undoing do not lead back, or a score differs from one worked out anew. */
    @ParameterizedTest
    @Seeds({1, 2})
    void everyMoveScoresLikeAFreshRun(long seed) {
        CompiledSeason season = season(seed, 10, costs(200));
        ListPlayer player = new ListPlayer(season);
        FieldLists start = FirstLists.best(season);
        FieldLists found = new Search(season, Scoring.BY_GOALS, seed, 2, EnvironmentMode.FULL_ASSERT)
                .improve(start, SearchLimits.moves(500), better -> {});

        assertThat(player.score(found)).isGreaterThanOrEqualTo(player.score(start));
    }

    private static Costs times(double factor, Costs costs) {
        return new Costs(
                costs.currency(),
                factor * costs.labourPerH(),
                factor * costs.fuelPerH(),
                factor * costs.fuelPerKm(),
                factor * costs.compostPerKg(),
                factor * costs.latePerHaDay(),
                factor * costs.unservedPerHa(),
                factor * costs.untreatedPerHa(),
                factor * costs.waterPerL(),
                factor * costs.overtimePerH(),
                costs.yearly());
    }

    private static HardMediumSoftLongScore searched(CompiledSeason season, long seed) {
        return new ListPlayer(season).score(found(season, seed, MOVES));
    }

    private static FieldLists found(CompiledSeason season, long seed, long moves) {
        return new Search(season, seed, 2).improve(FirstLists.best(season), SearchLimits.moves(moves), better -> {});
    }

    private static CompiledSeason season(long seed, int fields, Costs costs) {
        Season season = InventedSeason.hurried(fields, 2, seed);
        return CompiledSeason.of(season.change()
                .goals(season.goals().withByMoney(Optional.of(costs)))
                .season());
    }

    private static Costs costs(double unserved) {
        return new Costs(Optional.empty(), 24, 14, 0.37, 0.18, 9.9, unserved, 0, 0.003, 51, Map.of());
    }
}
