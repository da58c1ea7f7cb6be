package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.WorkedSeason.day;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.CompostLot;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Why planting goes on without extract: the same plans as in {@link WithoutExtractTest}. */
class GoneWithoutTest {
    @Test
    void whenTheCompostIsGoneNoneIsToCome() {
        WorkedSeason season = new WorkedSeason()
                .lots(new CompostLot("heap", 50, day(1)))
                .untreated(4)
                .field("A", 8);

        assertThat(all(season, Set.of(), "A")).singleElement().satisfies(part -> {
            assertThat(part.planter()).isEqualTo("P1");
            assertThat(part.field()).isEqualTo("A");
            assertThat(part.areaHa()).isEqualTo(3, within(1e-9));
            assertThat(part.start()).isEqualTo(day(1).atTime(8, 56, 40));
            assertThat(part.end()).isEqualTo(day(1).atTime(9, 46, 40));
            assertThat(part.reason()).isEqualTo(new GoneWithout.NoCompost(Optional.empty()));
        });
    }

    @Test
    void untilTheNextLotIsOnHandThereIsNoCompost() {
        WorkedSeason season = new WorkedSeason()
                .lots(new CompostLot("heap", 50, day(1)), new CompostLot("delivery", 50, day(2)))
                .untreated(4)
                .field("A", 46.2);

        assertThat(all(season, Set.of(), "A"))
                .extracting(GoneWithout::reason)
                .containsExactly(new GoneWithout.NoCompost(Optional.of(day(2).atStartOfDay())));
    }

    @Test
    void aWaitThatIsTooLongIsToldWithTheRigAndTheFill() {
        // the rig has a batch in the field at 09:26:40; the planter would plant from 07:20:00 on
        assertThat(all(lateRig(30 * 60), Set.of(), "A"))
                .extracting(GoneWithout::reason)
                .containsExactly(new GoneWithout.LongWait(
                        "R1", day(1).atTime(9, 26, 40), Duration.ofMinutes(126).plusSeconds(40)));
        assertThat(all(lateRig(3 * 3600), Set.of(), "A")).isEmpty();
    }

    @Test
    void aDecisionIsTold() {
        WorkedSeason season = new WorkedSeason().untreated(4).field("A", 5).field("B", 5);

        assertThat(all(season, Set.of("A"), "A B"))
                .extracting(GoneWithout::field, GoneWithout::reason)
                .containsExactly(tuple("A", new GoneWithout.Decided()));
    }

    @Test
    void noRigCanBringALoadBeforeTheSeasonEnds() {
        // the rig works from 19:00 on, and the planter until then
        WorkedSeason season = new WorkedSeason()
                .rig("R1", rig -> rig.hours("19:00/20:00"))
                .untreated(4)
                .field("A", 5);

        assertThat(all(season, Set.of(), "A"))
                .extracting(GoneWithout::reason)
                .containsExactly(new GoneWithout.NoLoad());
    }

    private static List<GoneWithout> all(WorkedSeason season, Set<String> without, String list) {
        return GoneWithout.all(
                CompiledSeason.of(season.season()), new PlantingOrders(List.of(List.of(list.split(" ", -1))), without));
    }

    private static WorkedSeason lateRig(int longestWaitS) {
        return new WorkedSeason()
                .rig("R1", rig -> rig.hours("09:00/20:00"))
                .planter("P1", planter -> planter.longestWait(longestWaitS))
                .untreated(4)
                .field("A", 12);
    }
}
