package freshfurrow.solver.independent;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.example.SmallSeasons;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.bounds.Enumeration;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.example.KindsOfSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;

/** The search that others are held against is right itself. */
class IndependentSearchTest {
    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8})
    void itFindsTheBestOfAllPlans(long seed) {
        assertItFindsTheBestOfAllPlans(SmallSeasons.season(seed), seed);
    }

    /** As not all can be planted with extract, the best plan leaves fields out. */
    @ParameterizedTest
    @Seeds({1, 2, 3})
    void itFindsTheBestOfAllPlansWhereCompostIsShort(long seed) {
        assertItFindsTheBestOfAllPlans(KindsOfSeason.withCompostFor(0.7, SmallSeasons.season(seed)), seed);
    }

    private static void assertItFindsTheBestOfAllPlans(Season of, long seed) {
        CompiledSeason season = CompiledSeason.of(of);
        FieldLists best = Enumeration.best(season, StopSignal.untilTold()).orElseThrow();

        FieldLists found = new IndependentSearch(season, seed).improve(FirstLists.byHand(season), 60_000);

        assertThat(score(season, found)).isEqualTo(score(season, best));
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void whateverTheSeasonWhatItFindsStandsOnceAtMostAndIsNoWorseThanItsStart(long seed) {
        CompiledSeason season = CompiledSeason.of(RandomSeasons.season(seed));
        FieldLists start = FirstLists.byHand(season);

        FieldLists found = new IndependentSearch(season, seed).improve(start, 2_000);

        assertThat(found.byPlanter().stream().flatMap(List::stream)).doesNotHaveDuplicates();
        assertThat(score(season, found)).isGreaterThanOrEqualTo(score(season, start));
    }

    @ParameterizedTest
    @Seeds({1, 2})
    void theSameSeedAndStepsFindTheSame(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(70, 3, 1, 12_000, seed));
        FieldLists start = FirstLists.byHand(season);

        FieldLists found = new IndependentSearch(season, seed).improve(start, 3_000);

        assertThat(new IndependentSearch(season, seed).improve(start, 3_000))
                .isEqualTo(found)
                .isNotEqualTo(start);
    }

    private static HardMediumSoftLongScore score(CompiledSeason season, FieldLists lists) {
        return new ListPlayer(season).score(lists);
    }
}
