package freshfurrow.solver.construction;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Seeds;
import freshfurrow.model.season.DateWindow;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class ConvoyTest {
    private static final int FIELDS = 60;

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
        CompiledSeason season = CompiledSeason.of(InventedSeason.withFields(
                invented,
                invented.fields().stream()
                        .map(field -> field.change()
                                .window(field.areaHa() < 30 ? late : early)
                                .planters(Set.of())
                                .field())
                        .toList()));

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

        for (NextField convoy : Convoys.of(new SeasonEstimate(season))) {
            FieldLists lists = lists(season, convoy);
            assertThat(lists.byPlanter().stream().flatMap(List::stream))
                    .containsExactlyInAnyOrderElementsOf(
                            IntStream.range(0, FIELDS).boxed().toList());
            assertThat(new ListPlayer(season).play(lists).forbiddenFields()).isZero();
        }
    }

    private static Season oneWindow(Season season) {
        DateWindow window = new DateWindow(season.first(), season.first().plusDays(20));
        return InventedSeason.withFields(
                season,
                season.fields().stream()
                        .map(field ->
                                field.change().window(window).planters(Set.of()).field())
                        .toList());
    }

    private static FieldLists convoy(CompiledSeason season, Curve curve, int blockDays) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        return lists(season, new Convoy(estimate, curve, new FieldMap(estimate), blockDays));
    }

    private static FieldLists lists(CompiledSeason season, NextField rule) {
        return new Dispatch(season, new SeasonEstimate(season), 1.4, StopSignal.untilTold())
                .lists(rule)
                .orElseThrow();
    }
}
