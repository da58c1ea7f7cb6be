package freshfurrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import freshfurrow.model.example.Seeds;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.estimate.SeasonEstimate;
import freshfurrow.solver.estimate.Stops;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.EstimatedLists;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import freshfurrow.solver.schedule.ListScorer;
import freshfurrow.solver.schedule.Schedule;
import freshfurrow.solver.schedule.ScreenedLists;
import freshfurrow.solver.stop.StopSignal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;

class AnnealingTest {
    private static final HardMediumSoftLongScore HEAT = HardMediumSoftLongScore.of(0, 300, 10);

    /** FULL_ASSERT plays out all of what annealing is sure not to accept, too. */
    @ParameterizedTest
    @Seeds({1, 2, 3})
    void leavingOffWhatIsSureNotToBeAcceptedChangesNothing(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.hurried(16, 2, seed));
        FieldLists start = FirstLists.byHand(season);

        FieldLists leftOff =
                annealed(season, new ListPlayer(season), EnvironmentMode.NO_ASSERT, 2_000, new ArrayList<>());
        FieldLists playedOut =
                annealed(season, new ListPlayer(season), EnvironmentMode.FULL_ASSERT, 2_000, new ArrayList<>());

        assertThat(leftOff).isEqualTo(playedOut).isNotEqualTo(start);
    }

    @ParameterizedTest
    @Seeds({1, 2, 3, 4, 5, 6})
    void whateverIsDismissedByTheEstimateAllBetterListsHaveTheScoreOfTheTimeline(long seed) {
        CompiledSeason season = CompiledSeason.of(InventedSeason.hurried(16, 2, seed));
        Stops stops = new Stops(season);
        stops.learn(FirstLists.byHand(season).orders(season.season()));
        EstimatedLists estimate = new EstimatedLists(season, new SeasonEstimate(season), stops);
        ListPlayer player = new ListPlayer(season);
        List<Better> better = new ArrayList<>();

        annealed(
                season,
                new ScreenedLists(new ListPlayer(season), estimate, HEAT),
                EnvironmentMode.NO_ASSERT,
                4_000,
                better);

        assertThat(better).isNotEmpty().allMatch(found -> player.score(found.lists())
                .equals(found.score()));
    }

    private static FieldLists annealed(
            CompiledSeason season, ListScorer scorer, EnvironmentMode mode, long moves, List<Better> better) {
        SeasonEstimate estimate = new SeasonEstimate(season);
        Annealing annealing = new Annealing(
                estimate,
                new NearFields(estimate),
                mode,
                StopSignal.untilTold(),
                (lists, score) -> better.add(new Better(lists, score)));
        Schedule found = annealing.run(
                scorer, FirstLists.byHand(season), 1, HEAT, new TerminationConfig().withMoveCountLimit(moves));
        return found.fields();
    }

    private record Better(FieldLists lists, HardMediumSoftLongScore score) {}
}
