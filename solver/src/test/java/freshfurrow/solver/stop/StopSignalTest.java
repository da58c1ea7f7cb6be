package freshfurrow.solver.stop;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.construction.FollowedLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.search.Search;
import freshfurrow.solver.search.SearchLimits;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

final class StopSignalTest {
    private static final long HOUR_NS = 3_600_000_000_000L;

    private final StopSignal signal = StopSignal.untilTold();
    private final CompiledSeason season = CompiledSeason.of(InventedSeason.of(12, 2, 1, 8_000, 3));

    @Test
    void whoeverSetsASignalSetsThoseMadeFromIt() {
        StopSignal limited = signal.noLaterThan(System.nanoTime() + HOUR_NS);
        assertThat(limited.isSet()).isFalse();
        signal.set();
        assertThat(limited.isSet()).isTrue();
        assertThat(limited.isTold()).isTrue();
    }

    @Test
    void aTimeThatIsOverSetsTheLimitedSignalOnly() {
        StopSignal limited = signal.noLaterThan(System.nanoTime());
        assertThat(limited.isSet()).isTrue();
        assertThat(limited.isTold()).isFalse();
        assertThat(signal.isSet()).isFalse();
    }

    @Test
    void theSoonerOfTwoTimesCounts() {
        StopSignal over = signal.noLaterThan(System.nanoTime());
        assertThat(over.noLaterThan(System.nanoTime() + HOUR_NS).isSet()).isTrue();
        assertThat(signal.noLaterThan(System.nanoTime() + 2 * HOUR_NS)
                        .within(0.25)
                        .left()
                        .orElseThrow()
                        .toMinutes())
                .isBetween(28L, 30L);
        assertThat(signal.within(0.25).left()).isEmpty();
    }

    @Test
    void aListenerHearsAlsoWhatWasToldBefore() {
        AtomicInteger heard = new AtomicInteger();
        signal.whenTold(heard::incrementAndGet);
        signal.whenTold(heard::incrementAndGet).close();
        signal.set();
        assertThat(heard).hasValue(1);
        signal.whenTold(heard::incrementAndGet);
        assertThat(heard).hasValue(2);
    }

    @Test
    void onceSetOnlyTheListsOfTheHandRuleAreMade() {
        signal.set();
        assertThat(FirstLists.best(season, signal)).isEqualTo(FirstLists.byHand(season));
    }

    /** Twelve fields in no list, none of which is put into one. */
    @Test
    void onceSetFieldsThatStandInNoListStayInNone() {
        signal.set();
        PlantingOrders nothing = PlantingOrders.withExtract(List.of(List.of(), List.of()));
        assertThat(FollowedLists.left(season, nothing, signal).byPlanter()).containsExactly(List.of(), List.of());
        assertThat(FollowedLists.left(season, nothing).byPlanter().stream()
                        .mapToInt(List::size)
                        .sum())
                .isEqualTo(12);
    }

    @Test
    void onceSetASearchTriesNoMove() {
        signal.set();
        Search search = new Search(season, 1, 2);
        FieldLists start = FirstLists.byHand(season);
        assertThat(search.improve(start, new SearchLimits(signal, OptionalLong.empty()), better -> {}))
                .isSameAs(start);
        assertThat(search.movesTried()).isZero();
    }
}
