package freshfurrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.example.KindsOfSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.Scoring;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class RebuildingTest {
    private static final HardMediumSoftLongScore HEAT = HardMediumSoftLongScore.of(0, 300, 10);

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void whateverTheSeasonAllBetterListsHaveEachFieldOnceAndTheScoreOfAFreshRun(long seed) {
        CompiledSeason season = CompiledSeason.of(RandomSeasons.season(seed));
        ListPlayer player = new ListPlayer(season);
        FieldLists start = FirstLists.byHand(season);
        List<Found> better = new ArrayList<>();

        Found found = rebuilt(season, start, 2_000, better);

        assertThat(found.score()).isGreaterThanOrEqualTo(player.score(start));
        better.add(found);
        assertThat(better).allSatisfy(one -> {
            assertThat(one.lists().byPlanter().stream().flatMap(List::stream)).doesNotHaveDuplicates();
            assertThat(player.score(one.lists())).isEqualTo(one.score());
            assertThat(player.play(one.lists()).forbiddenFields())
                    .isLessThanOrEqualTo(player.play(start).forbiddenFields());
        });
    }

    @ParameterizedTest
    @Seeds({1, 2, 3})
    void seasonsOfManyFieldsAreRebuiltBesideNearFields(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(80, 3, 1, 12_000, seed));
        FieldLists start = FirstLists.byHand(season);

        Found found = rebuilt(season, start, 8_000, new ArrayList<>());

        assertThat(found.score()).isGreaterThan(new ListPlayer(season).score(start));
        assertThat(rebuilt(season, start, 8_000, new ArrayList<>())).isEqualTo(found);
    }

    /** With compost for some of the fields, the smallest are planted to begin with and the others stand in no list. */
    @ParameterizedTest
    @Seeds({1, 2, 3})
    void fieldsInNoListTakeThePlaceOfOthers(long seed) {
        Season scarce = KindsOfSeason.withCompostFor(0.5, InventedSeason.of(12, 2, 1, 8_000, seed));
        CompiledSeason season = CompiledSeason.of(scarce);
        List<Integer> smallest = IntStream.range(0, 12)
                .boxed()
                .sorted((one, other) -> Long.compare(season.areaDm2(one), season.areaDm2(other)))
                .toList();
        FieldLists start = new FieldLists(List.of(smallest.subList(0, 4), smallest.subList(4, 7)));

        Found found = rebuilt(season, start, 4_000, new ArrayList<>());

        assertThat(found.score()).isGreaterThan(new ListPlayer(season).score(start));
    }

    @Test
    void asManyListsAreScoredAsItMay() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(10, 2, 1, 5_000, 4));
        SeasonEstimate estimate = new SeasonEstimate(season);
        Rebuilding rebuilding =
                new Rebuilding(season, Scoring.BY_GOALS, estimate, new NearFields(estimate), (lists, score) -> {});

        rebuilding.run(FirstLists.byHand(season), 1, HEAT, SearchLimits.moves(777));

        assertThat(rebuilding.movesTried()).isEqualTo(777);
    }

    private static Found rebuilt(CompiledSeason season, FieldLists start, long moves, List<Found> better) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        Rebuilding rebuilding = new Rebuilding(
                season,
                Scoring.BY_GOALS,
                estimate,
                new NearFields(estimate),
                (lists, score) -> better.add(new Found(lists, score)));
        return rebuilding.run(start, 1, HEAT, SearchLimits.moves(moves));
    }
}
