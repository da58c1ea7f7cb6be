package freshfurrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Scoring;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class SearchTest {
    @ParameterizedTest
    @Seeds({1, 2, 3})
    void everyMoveCanBeVoidedAndScoresLikeAFreshRun(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(12, 3, 1, 10_000, seed));
        Search search = new Search(season, Scoring.BY_GOALS, seed, 2, EnvironmentMode.FULL_ASSERT);

        // FULL_ASSERT throws when a move and its undoing do not lead back, or a score differs from one worked out anew
        FieldLists found = search.improve(FirstLists.best(season), moves(1_500), better -> {});

        assertThat(found.byPlanter().stream().flatMap(List::stream)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @Seeds({11, 12, 13, 14, 15, 16, 17, 18})
    void hardSeasonsAreSearchedWithoutABrokenRule(long seed) {
        CompiledSeason season = CompiledSeason.of(RandomSeasons.season(seed));
        ListPlayer player = new ListPlayer(season);
        FieldLists start = FirstLists.best(season);

        FieldLists found = new Search(season, Scoring.BY_GOALS, seed, 2, EnvironmentMode.FULL_ASSERT)
                .improve(start, moves(200), better -> {});

        assertThat(player.score(found)).isGreaterThanOrEqualTo(player.score(start));
        assertThat(player.play(found).forbiddenFields()).isZero();
    }

    @Test
    void theResultIsNeverWorseThanTheStart() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(20, 2, 1, 10_000, 4));
        ListPlayer player = new ListPlayer(season);
        FieldLists start = FirstLists.byHand(season);

        FieldLists found = new Search(season, 1, 2).improve(start, moves(5), better -> {});

        assertThat(player.score(found)).isGreaterThanOrEqualTo(player.score(start));
    }

    @ParameterizedTest
    @Seeds({1, 2, 3})
    void theResultIsTheSameOnOneThreadAndOnTwo(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(16, 3, 2, 10_000, seed));
        FieldLists start = FirstLists.byHand(season);

        FieldLists onOne = new Search(season, seed, 1).improve(start, moves(40_001), better -> {});
        FieldLists onTwo = new Search(season, seed, 2).improve(start, moves(40_001), better -> {});

        assertThat(onTwo).isEqualTo(onOne).isNotEqualTo(start);
    }

    @ParameterizedTest
    @Seeds({1, 2, 3})
    void severalStartsAreEachImprovedOnOneThreadAsOnTwo(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.cropWindows(30, 4, 1, 12_000, seed));
        ListPlayer player = new ListPlayer(season);
        FieldLists best = FirstLists.best(season);
        List<FieldLists> starts = List.of(best, FirstLists.byHand(season));

        FieldLists onOne = new Search(season, seed, 1).improve(starts, moves(2_001), better -> {});
        FieldLists onTwo = new Search(season, seed, 2).improve(starts, moves(2_001), better -> {});

        assertThat(onTwo).isEqualTo(onOne);
        assertThat(player.score(onOne)).isGreaterThan(player.score(best));
    }

    /** The order does not matter. */
    @Test
    void theBestOfSeveralStartsIsKept() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(20, 2, 1, 10_000, 4));
        FieldLists none = new FieldLists(List.of(List.of(), List.of()));
        FieldLists byHand = FirstLists.byHand(season);
        ListPlayer player = new ListPlayer(season);

        FieldLists found = new Search(season, 1, 2).improve(List.of(none, byHand), moves(1), better -> {});

        assertThat(player.score(found)).isGreaterThanOrEqualTo(player.score(byHand));
    }

    @Test
    void aFieldInNoListFindsOne() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(6, 2, 1, 5_000, 4));
        FieldLists none = new FieldLists(List.of(List.of(), List.of()));

        FieldLists found = new Search(season, 1, 2).improve(none, moves(4_000), better -> {});

        assertThat(found.byPlanter().stream().flatMap(List::stream)).hasSize(6);
    }

    @Test
    void betterListsAreToldWhileSearching() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(20, 2, 1, 10_000, 4));
        ListPlayer player = new ListPlayer(season);
        FieldLists start = FirstLists.byHand(season);
        FieldLists[] last = {start};

        FieldLists found = new Search(season, 1, 2).improve(start, moves(2_000), better -> {
            assertThat(player.score(better)).isGreaterThanOrEqualTo(player.score(last[0]));
            last[0] = better;
        });

        assertThat(found).isEqualTo(last[0]).isNotEqualTo(start);
    }

    @Test
    void nothingIsTriedBeyondTheLimit() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(2, 1, 1, 5_000, 4));
        Search search = new Search(season, 1, 2);

        search.improve(FirstLists.byHand(season), moves(77), better -> {});

        assertThat(search.movesTried()).isEqualTo(77);
    }

    @Test
    void oneThreadIsNotGivenTheTimeOfTwo() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(200, 6, 3, 20_000, 4));
        FieldLists start = FirstLists.byHand(season);
        Duration limit = Duration.ofSeconds(2);
        long startNs = System.nanoTime();

        new Search(season, 1, 1).improve(start, SearchLimits.time(limit), better -> {});

        assertThat(Duration.ofNanos(System.nanoTime() - startNs))
                .isLessThan(limit.multipliedBy(5).dividedBy(4));
    }

    private static SearchLimits moves(long moves) {
        return SearchLimits.moves(moves);
    }
}
