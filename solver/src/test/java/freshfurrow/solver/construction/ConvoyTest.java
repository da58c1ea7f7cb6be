package freshfurrow.solver.construction;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.Convoy.Detours;
import freshfurrow.solver.construction.Convoy.Way;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class ConvoyTest {
    private static final int FIELDS = 60;
    private static final Detours STRICT = new Detours(0, 0);

    @Test
    void onePlanterFollowsTheCurveInAWindowThatIsOpenFromTheStart() {
        CompiledSeason season = CompiledSeason.of(oneWindow(InventedSeason.of(FIELDS, 1, 1, 20_000, 1)));
        double[] along = new HilbertCurve().along(new FieldMap(new SeasonEstimate(season)));

        List<Integer> list = convoy(season, new HilbertCurve(), 4).of(0);

        assertThat(list).isSortedAccordingTo(Comparator.comparingDouble(field -> along[field]));
    }

    @Test
    void windowsThatCloseSoonerComeFirst() {
        Season invented = InventedSeason.of(FIELDS, 1, 1, 20_000, 2);
        DateWindow early = new DateWindow(invented.first(), invented.first().plusDays(7));
        DateWindow late = new DateWindow(invented.first(), invented.first().plusDays(8));
        CompiledSeason season = CompiledSeason.of(alike(invented, field -> field.areaHa() < 30 ? late : early));

        List<Integer> list = convoy(season, new Strips(0, 3), 4).of(0);

        assertThat(list).isSortedAccordingTo(Comparator.comparingInt(season::windowLastDay));
    }

    /** Of four planters on one curve none is done with a fifth of the fields that another leaves for later. */
    @ParameterizedTest
    @Seeds({1, 2, 3})
    void plantersStayTogether(long seed) {
        CompiledSeason season = CompiledSeason.of(oneWindow(InventedSeason.of(FIELDS, 4, 2, 20_000, seed)));
        double[] along = new Strips(45, 3).along(new FieldMap(new SeasonEstimate(season)));
        List<Integer> order = IntStream.range(0, FIELDS)
                .boxed()
                .sorted(Comparator.comparingDouble(field -> along[field]))
                .toList();

        FieldLists lists = convoy(season, new Strips(45, 3), 4);

        for (int fifth = 0; fifth < 5; fifth++) {
            List<Integer> part = order.subList(fifth * FIELDS / 5, (fifth + 1) * FIELDS / 5);
            assertThat(lists.byPlanter()).allMatch(list -> list.stream().anyMatch(part::contains));
        }
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5})
    void everyFieldStandsInOneListThatMayHoldIt(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.of(FIELDS, 5, 2, 20_000, seed));

        for (Way way : Stream.concat(
                        Convoys.usual().stream(), Convoys.others(Convoys.usual().get(0)))
                .toList()) {
            FieldLists lists = lists(season, way);
            assertThat(lists.byPlanter().stream().flatMap(List::stream))
                    .containsExactlyInAnyOrderElementsOf(
                            IntStream.range(0, FIELDS).boxed().toList());
            assertThat(new ListPlayer(season).play(lists).forbiddenFields()).isZero();
        }
    }

    /** All fields on the same ground, so that rain closes them together. */
    private static Season oneWindow(Season season) {
        return alike(
                season, field -> new DateWindow(season.first(), season.first().plusDays(20)));
    }

    private static Season alike(Season season, Function<Field, DateWindow> window) {
        return InventedSeason.withFields(
                season,
                season.fields().stream()
                        .map(field -> field.change()
                                .window(window.apply(field))
                                .drainage(Drainage.WELL)
                                .planters(Set.of())
                                .field())
                        .toList());
    }

    @Test
    void aPlanterPassesOverAFieldOfAnotherRecipeAndOneFarOff() {
        CompiledSeason season = CompiledSeason.of(oneWindow(InventedSeason.of(FIELDS, 1, 1, 20_000, 4)));

        List<Integer> strict =
                lists(season, new Way(new HilbertCurve(), 4, STRICT)).of(0);
        List<Integer> fewChanges = lists(season, new Way(new HilbertCurve(), 4, new Detours(0, 20)))
                .of(0);
        List<Integer> shortWays = lists(season, new Way(new HilbertCurve(), 4, new Detours(60, 0)))
                .of(0);

        assertThat(changes(season, fewChanges)).isLessThan(changes(season, strict));
        assertThat(metres(season, shortWays)).isLessThan(metres(season, strict));
    }

    private static long changes(CompiledSeason season, List<Integer> list) {
        return IntStream.range(1, list.size())
                .filter(i -> season.recipeIndex(list.get(i)) != season.recipeIndex(list.get(i - 1)))
                .count();
    }

    private static int metres(CompiledSeason season, List<Integer> list) {
        return IntStream.range(1, list.size())
                .map(i -> season.metresBetweenFields(list.get(i - 1), list.get(i)))
                .sum();
    }

    private static FieldLists convoy(CompiledSeason season, Curve curve, int blockDays) {
        return lists(season, new Way(curve, blockDays, STRICT));
    }

    private static FieldLists lists(CompiledSeason season, Way way) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        return new PlayedDispatch(season, estimate, StopSignal.untilTold())
                .lists(new Convoy(estimate, new FieldMap(estimate), way), Fleet.whole(season))
                .orElseThrow();
    }
}
