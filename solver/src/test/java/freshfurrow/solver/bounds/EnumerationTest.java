package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.BruteForce;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.example.SmallSeasons;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Timeline;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.stop.StopSignal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class EnumerationTest {
    /** Against code that has nothing in common with it. */
    @ParameterizedTest
    @Seeds({1, 3, 4})
    void theBestPlanIsThatOfBruteForce(long seed) {
        CompiledSeason season = CompiledSeason.of(SmallSeasons.season(seed));
        Timeline played = new ListPlayer(season)
                .play(Enumeration.best(season, StopSignal.untilTold()).orElseThrow());

        assertThat(new Plan.Score(played.hard(), played.medium(), played.soft()))
                .isEqualTo(BruteForce.of(season).score());
    }

    /** Three fields of 2 ha and one day for two of them: with the light one left out the other two are planted in time. */
    @Test
    void aFieldIsLeftOutWhereThatIsBest() {
        CompiledSeason season = CompiledSeason.of(new TwoFieldsADay(1)
                .field(0, 0, 1)
                .field(0, 0, 1)
                .field(0, 0, 1)
                .season(1));
        FieldLists best = Enumeration.best(season, StopSignal.untilTold()).orElseThrow();

        assertThat(new ListPlayer(season).play(best).unservedDm2()).isEqualTo(2_000_000);
    }

    @Test
    void aSeasonOfTooManyPlansIsNotTried() {
        assertThat(Enumeration.best(CompiledSeason.of(InventedSeason.hurried(12, 2, 1)), StopSignal.untilTold()))
                .isEmpty();
    }

    @Test
    void whatIsStoppedProvesNothing() {
        CompiledSeason season = CompiledSeason.of(
                new TwoFieldsADay(1).field(0, 0, 1).field(0, 0, 1).season(3));

        StopSignal told = StopSignal.untilTold();
        told.set();
        assertThat(Enumeration.best(season, told)).isEmpty();
        assertThat(Enumeration.best(season, StopSignal.untilTold()))
                .map(FieldLists::byPlanter)
                .hasValueSatisfying(lists -> assertThat(lists).isEqualTo(List.of(List.of(0, 1))));
    }
}
