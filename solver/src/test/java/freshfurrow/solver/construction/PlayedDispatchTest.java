package freshfurrow.solver.construction;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Fixed;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class PlayedDispatchTest {
    private static final NextField FIRST_IN_THE_FILE = (planter, from, field, clockS) -> -field;

    @Test
    void aDryFieldComesBeforeAWetOne() {
        Season season = twoFields();
        Season wet = InventedSeason.withRain(season, List.of(new Rain(season.first(), 6 * 3600, 30)));

        assertThat(played(season).byPlanter()).containsExactly(List.of(0, 1));
        assertThat(played(wet).byPlanter()).containsExactly(List.of(1, 0));
    }

    @Test
    void anOpenWindowComesBeforeAClosedOne() {
        Season season = twoFields();
        DateWindow later =
                new DateWindow(season.first().plusDays(1), season.first().plusDays(9));
        Season closed = InventedSeason.withFields(
                season,
                List.of(
                        season.fields().get(0).change().window(later).field(),
                        season.fields().get(1)));

        assertThat(played(closed).byPlanter()).containsExactly(List.of(1, 0));
    }

    @Test
    void aFieldThatIsFixedToADayIsPlantedOnIt() {
        Season season = InventedSeason.withRain(InventedSeason.of(12, 1, 1, 6_000, 3), List.of());
        DateWindow open = new DateWindow(season.first(), season.first().plusDays(20));
        Fixed on = new Fixed(Optional.empty(), Optional.of(season.first().plusDays(4)));
        CompiledSeason fixed = CompiledSeason.of(InventedSeason.withFields(
                season,
                IntStream.range(0, 12)
                        .mapToObj(field -> {
                            Field free = season.fields()
                                    .get(field)
                                    .change()
                                    .window(open)
                                    .field();
                            return field == 4 ? free.change().fixed(on).field() : free;
                        })
                        .toList()));

        FieldLists lists = lists(fixed, FIRST_IN_THE_FILE);

        assertThat(new ListPlayer(fixed).play(lists).brokenPromises()).isZero();
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void whateverTheSeasonEachFieldThatAPlanterMayPlantStandsInOneListThatMayHoldIt(long seed) {
        CompiledSeason season = CompiledSeason.of(RandomSeasons.mixed(seed, 20));

        FieldLists lists = lists(season, FIRST_IN_THE_FILE);

        assertThat(lists.byPlanter().stream().flatMap(List::stream))
                .containsExactlyInAnyOrderElementsOf(IntStream.range(0, season.fieldCount())
                        .filter(field -> IntStream.range(0, season.planterCount())
                                .anyMatch(planter -> season.allows(planter, field)))
                        .boxed()
                        .toList());
        assertThat(new ListPlayer(season).play(lists).forbiddenFields()).isZero();
        assertThat(lists(season, FIRST_IN_THE_FILE)).isEqualTo(lists);
    }

    /** Eight planters wait for one rig by turns, which no estimate of their clocks tells. */
    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5})
    void whereRigsAreSharedAndSomeIsLateTheBestConvoyIsBetterThanByAnEstimateOfClocks(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.cropWindows(200, 8, 1, 24_000, seed));
        SeasonEstimate estimate = new SeasonEstimate(season);
        Dispatch estimated = new Dispatch(season, estimate, 1.4, StopSignal.untilTold());

        HardMediumSoftLongScore byEstimate = best(
                season, convoy -> estimated.lists(convoy, Fleet.whole(season)).orElseThrow());

        assertThat(best(season, convoy -> lists(season, convoy))).isGreaterThan(byEstimate);
    }

    @Test
    void nothingIsGivenOutOnceItIsToldToStop() {
        CompiledSeason season = CompiledSeason.of(twoFields());
        StopSignal stop = StopSignal.untilTold();
        stop.set();

        assertThat(new PlayedDispatch(season, new SeasonEstimate(season), stop)
                        .lists(FIRST_IN_THE_FILE, Fleet.whole(season)))
                .isEmpty();
    }

    private static HardMediumSoftLongScore best(CompiledSeason season, Function<NextField, FieldLists> dispatch) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        FieldMap map = new FieldMap(estimate);
        ListPlayer player = new ListPlayer(season);
        return Convoys.usual().stream()
                .map(way -> player.score(dispatch.apply(new Convoy(estimate, map, way))))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Of which the first drains poorly and the second well, with windows that are open from the first day on. */
    private static Season twoFields() {
        Season season = InventedSeason.withRain(InventedSeason.of(2, 1, 1, 5_000, 1), List.of());
        DateWindow window = new DateWindow(season.first(), season.first().plusDays(9));
        List<Drainage> drainage = List.of(Drainage.POOR, Drainage.WELL);
        List<Field> fields = new ArrayList<>();
        for (int field = 0; field < 2; field++) {
            fields.add(season.fields()
                    .get(field)
                    .change()
                    .drainage(drainage.get(field))
                    .window(window)
                    .planters(Set.of())
                    .field());
        }
        return InventedSeason.withFields(season, fields);
    }

    private static FieldLists played(Season season) {
        return lists(CompiledSeason.of(season), FIRST_IN_THE_FILE);
    }

    private static FieldLists lists(CompiledSeason season, NextField rule) {
        return new PlayedDispatch(season, new SeasonEstimate(season), StopSignal.untilTold())
                .lists(rule, Fleet.whole(season))
                .orElseThrow();
    }
}
