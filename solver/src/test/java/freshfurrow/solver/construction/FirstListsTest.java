package freshfurrow.solver.construction;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FirstListsTest {
    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8})
    void theBestIsNeverWorseThanTheHandRule(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(25, 2, 1, 15_000, seed));
        ListPlayer player = new ListPlayer(season);

        assertThat(player.score(FirstLists.best(season)))
                .isGreaterThanOrEqualTo(player.score(FirstLists.byHand(season)));
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4})
    void everyFieldStandsInOneListThatMayHoldIt(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(25, 3, 2, 15_000, seed));
        FieldLists lists = FirstLists.best(season);

        assertThat(lists.byPlanter().stream().flatMap(List::stream))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 25).boxed().toList());
        assertThat(new ListPlayer(season).play(lists).forbiddenFields()).isZero();
    }

    @ParameterizedTest
    @Seeds({1, 2, 3})
    void aLargeSeasonBeginsWithTheBestOfTwoKinds(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.cropWindows(300, 6, 2, 60_000, seed));
        ListPlayer player = new ListPlayer(season);

        List<FieldLists> starts = FirstLists.severalBest(season, StopSignal.untilTold());

        assertThat(starts).hasSize(2).first().isEqualTo(FirstLists.best(season));
        assertThat(player.score(starts.get(0))).isGreaterThanOrEqualTo(player.score(starts.get(1)));
    }

    /** Twenty planters wait for five rigs by turns, and there is time enough for fewer. */
    @ParameterizedTest
    @Seeds({1, 2, 3})
    void wherePlantersWouldQueueForRigsFewerAreSentOut(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.cropWindows(400, 20, 5, 34_000, seed));
        ListPlayer player = new ListPlayer(season);

        FieldLists best = FirstLists.best(season);

        long notSent = best.byPlanter().stream()
                .filter(list -> list.size() < 400 / 20 / 2)
                .count();
        assertThat(notSent).isGreaterThanOrEqualTo(8);
        assertThat(player.play(best).lateDm2Days()).isZero();
        long waitS = player.play(best).waitS();
        assertThat(5 * waitS).isLessThan(player.play(FirstLists.byHand(season)).waitS());
    }

    @ParameterizedTest
    @Seeds({1, 2, 3})
    void whereTimeIsShortAllPlantersAreSentOut(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(160, 3, 3, 21_000, seed));

        assertThat(FirstLists.best(season).byPlanter())
                .allSatisfy(list -> assertThat(list).hasSizeGreaterThan(10));
    }

    @Test
    void theHandRuleGoesByClosingDateAndThenToTheNearest() {
        Season season = InventedSeason.of(25, 1, 1, 15_000, 9);
        CompiledSeason compiled = CompiledSeason.of(season);
        List<Integer> list = FirstLists.byHand(compiled).of(0);

        assertThat(list).isSortedAccordingTo((a, b) -> compiled.windowLastDay(a) - compiled.windowLastDay(b));
        for (int i = 0; i + 1 < list.size(); i++) {
            int here = list.get(i);
            int next = list.get(i + 1);
            assertThat(list.subList(i + 1, list.size()))
                    .filteredOn(other -> compiled.windowLastDay(other) == compiled.windowLastDay(next))
                    .allSatisfy(other -> assertThat(compiled.metresBetweenFields(here, next))
                            .isLessThanOrEqualTo(compiled.metresBetweenFields(here, other)));
        }
    }

    /** Compost is scarce, so that to go without is worth most. */
    @ParameterizedTest
    @ValueSource(ints = {0, 50, 100, 150})
    void noSprayedFieldGoesWithoutExtract(int first) {
        for (long seed = first; seed < first + 50; seed++) {
            Season mixed = RandomSeasons.mixed(seed, 12);
            Season scarce = mixed.change()
                    .goals(mixed.goals().withUntreatedDays(OptionalDouble.of(1)))
                    .compost(mixed.compost().stream()
                            .map(lot -> lot.withMassKg(lot.massKg() / 10))
                            .toList())
                    .season();
            CompiledSeason season = CompiledSeason.of(scarce);
            assertThat(FirstLists.best(season).withoutExtract()).allMatch(season::mayGoWithout);
        }
    }

    @Test
    void aFieldThatNoPlanterMayPlantStaysOut() {
        // the season knows no planter of that name, so nobody may plant its restricted fields
        CompiledSeason season = CompiledSeason.of(InventedSeason.restrictedTo("nobody", 12, 2));

        assertThat(FirstLists.best(season).byPlanter().stream().flatMap(List::stream))
                .containsExactlyInAnyOrderElementsOf(IntStream.range(0, 12)
                        .filter(field -> field != 0)
                        .boxed()
                        .toList());
    }
}
