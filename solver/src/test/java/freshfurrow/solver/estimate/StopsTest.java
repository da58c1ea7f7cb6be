package freshfurrow.solver.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.WaitReason;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.example.InventedSeason;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StopsTest {
    private static final Season SEASON = InventedSeason.of(2, 1, 1, 5_000, 1);
    private static final CompiledSeason COMPILED = CompiledSeason.of(SEASON);
    private static final LocalDateTime MORNING = SEASON.first().atTime(7, 0);

    @Test
    void waitingAndFillingCountForEachBitOfAreaPlanted() {
        Stops stops = new Stops(COMPILED);

        // 20 min of waiting and 10 min of filling for 12 ha
        stops.learn(plan(
                new Activity.Wait(MORNING, MORNING.plusMinutes(20), "F0", WaitReason.RIG),
                new Activity.Fill(MORNING.plusMinutes(20), MORNING.plusMinutes(30), "F0", "L0001"),
                new Activity.Plant(MORNING.plusMinutes(30), MORNING.plusMinutes(145), "F0", "L0001", 12)));

        assertThat(stops.perDm2S()[0][0]).isCloseTo(1_800 / 12e6, within(1e-12));
        assertThat(stops.perFillS()[0]).isEqualTo(1_800);
    }

    @Test
    void waitingForDrySoilIsNoStop() {
        Stops stops = new Stops(COMPILED);

        stops.learn(plan(
                new Activity.Wait(MORNING, MORNING.plusHours(3), "F0", WaitReason.WET),
                new Activity.Plant(MORNING.plusHours(3), MORNING.plusHours(5), "F0", "L0001", 12)));

        assertThat(stops.perDm2S()[0][0]).isZero();
    }

    @Test
    void aWaitOverNightCountsItsWorkingHoursOnly() {
        Stops stops = new Stops(COMPILED);

        // from 19:00, an hour before the day's end, to 8:00, an hour after the next one's beginning
        stops.learn(plan(
                new Activity.Wait(MORNING.plusHours(12), MORNING.plusHours(25), "F0", WaitReason.COMPOST),
                new Activity.Fill(MORNING.plusHours(25), MORNING.plusHours(25), "F0", "L0001"),
                new Activity.Plant(MORNING.plusHours(25), MORNING.plusHours(27), "F0", "L0001", 12)));

        assertThat(stops.perFillS()[0]).isEqualTo(2 * 3600);
    }

    @Test
    void aDayWithoutLoadsIsLong() {
        Stops stops = new Stops(COMPILED);

        stops.learn(plan(
                new Activity.Fill(MORNING, MORNING.plusMinutes(30), "F0", "L0001"),
                new Activity.Plant(MORNING.plusMinutes(30), MORNING.plusHours(3), "F0", "L0001", 12),
                new Activity.Wait(MORNING.plusDays(1), MORNING.plusDays(2), "F0", WaitReason.COMPOST),
                new Activity.Fill(MORNING.plusDays(2), MORNING.plusDays(2).plusMinutes(30), "F0", "L0002"),
                new Activity.Plant(
                        MORNING.plusDays(2).plusMinutes(30), MORNING.plusDays(2).plusHours(3), "F0", "L0002", 12)));

        assertThat(stops.perDm2S()[0][1]).isGreaterThan(5 * stops.perDm2S()[0][0]);
    }

    @Test
    void aLaterPlanCountsTwiceAsMuchAsTheOneBefore() {
        Stops stops = new Stops(COMPILED);

        stops.learn(fillOf(30));
        stops.learn(fillOf(60));

        // (30 / 2 + 60) min for (12 / 2 + 12) ha
        assertThat(stops.perDm2S()[0][0]).isCloseTo(75 * 60 / 18e6, within(1e-12));
    }

    private static Plan fillOf(int minutes) {
        return plan(
                new Activity.Fill(MORNING, MORNING.plusMinutes(minutes), "F0", "L0001"),
                new Activity.Plant(
                        MORNING.plusMinutes(minutes), MORNING.plusMinutes(minutes + 120), "F0", "L0001", 12));
    }

    private static Plan plan(Activity... activities) {
        return new Plan(
                Plan.SeasonSource.of(SEASON, "", ""),
                new Plan.Score(0, 0, 0),
                new Plan.Totals(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, MORNING),
                Map.of("P0", new Plan.PlanterPlan(2_271, List.of("F0"), List.of(), List.of(activities))),
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of());
    }
}
