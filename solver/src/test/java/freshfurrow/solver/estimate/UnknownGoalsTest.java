package freshfurrow.solver.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.goals.GoalSet;
import freshfurrow.model.season.Costs;
import freshfurrow.model.season.Goals;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.InventedSeason;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class UnknownGoalsTest {
    private final Season season = InventedSeason.hurried(16, 2, 1);

    @Test
    void anEstimateSeesNothingOfTripsWaitsDumpedMixScrapsCallOutsAndOvertime() {
        assertThat(unknown(Goals.DEFAULT).names())
                .containsExactly(
                        "water trips", "compost trips", "waiting", "dumped compost", "scraps", "call-outs", "overtime");
    }

    @Test
    void aGoalWithoutWeightNeedNotBeKnown() {
        assertThat(unknown(new Goals(30, 0, 0, 1, 0.5, 0, 0.1, 60, 0, 1, 0, 0, 0, 2, OptionalDouble.empty()))
                        .names())
                .containsExactly("waiting");
    }

    @Test
    void theirEffortIsThatOfTheTimeline() {
        CompiledSeason compiled = CompiledSeason.of(season);
        var played = new ListPlayer(compiled).play(FirstLists.byHand(compiled));

        assertThat(unknown(new Goals(30, 20, 20, 1, 0.5, 0, 0.1, 60, 0, 1, 0, 0, 0, 2, OptionalDouble.empty()))
                        .effortMin(played))
                .isEqualTo(20.0 * played.waterTrips() + played.waitS() / 60.0);
    }

    /** Else changes would be dismissed by an estimate that does not know what they cost. */
    @Test
    void byMoneyHoursCompostWaterAndRoadsOutweighWhatItKnows() {
        UnknownGoals dear = unknown(byMoney(24, 0.5, 0.2, 0.003, 60));
        assertThat(dear.names()).startsWith("hours", "roads", "compost", "water", "overtime pay");
        assertThat(dear.outweighEffort()).isTrue();

        assertThat(unknown(byMoney(0, 0, 0, 0, 0)).outweighEffort()).isFalse();
    }

    private static Goals byMoney(double labour, double road, double compost, double water, double overtime) {
        return Goals.DEFAULT.withByMoney(Optional.of(
                new Costs(Optional.empty(), labour, 0, road, compost, 10, 700, 50, water, overtime, Map.of())));
    }

    private UnknownGoals unknown(Goals goals) {
        return new UnknownGoals(GoalSet.of(season.change().goals(goals).season()), false);
    }
}
