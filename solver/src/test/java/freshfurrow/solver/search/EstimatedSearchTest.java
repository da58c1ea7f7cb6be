package freshfurrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Seeds;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.threads.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class EstimatedSearchTest {
    /** One planter and rig for 50 fields: 436 late ha-days by the best of the quick rules; a third of that is easily had. */
    @Test
    void manyFieldsForFewMachinesAreLateByHalfAfterwards() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(50, 1, 1, 12_000, 5));
        FieldLists start = FirstLists.best(season);
        ListPlayer player = new ListPlayer(season);

        FieldLists found = improved(season, start, Long.MAX_VALUE);

        assertThat(-player.score(found).mediumScore())
                .isLessThan(-player.score(start).mediumScore() / 2);
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8})
    void whatIsFoundIsNeverWorseByTheTimeline(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(24, 3, 1, 10_000, seed));
        FieldLists start = FirstLists.best(season);
        ListPlayer player = new ListPlayer(season);

        FieldLists found = improved(season, start, 400);

        assertThat(player.score(found)).isGreaterThanOrEqualTo(player.score(start));
    }

    @Test
    void nothingIsTriedWhenNoMovesAreLeft() {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(50, 1, 1, 12_000, 5));
        FieldLists start = FirstLists.best(season);

        assertThat(improved(season, start, 0)).isSameAs(start);
    }

    private static FieldLists improved(CompiledSeason season, FieldLists start, long moves) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        EstimatedSearch search =
                new EstimatedSearch(season, estimate, new NearFields(estimate), 1, 2, (lists, score) -> {});
        SearchLimits limits = SearchLimits.moves(moves);
        try (Workers workers = new Workers(2, "search")) {
            return search.improve(start, limits, workers);
        }
    }
}
