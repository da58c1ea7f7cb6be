package freshfurrow.solver.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.Plan;
import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.RandomSeasons;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.construction.FirstLists;
import freshfurrow.solver.example.KindsOfSeason;
import freshfurrow.solver.example.RandomPlans;
import freshfurrow.solver.stop.StopSignal;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Least effort against arithmetic done by hand, and against the best of all plans of small seasons. Weights are those of a season that states none. */
class LeastEffortTest {
    private static final int MOST_FIELDS = 5;

    /**
     * Six fields of 2 ha out of loads of 4 are three fills of 30 min; a nurse tank holds the water for 8 ha, so there are two trips of 20 min; and 4 ha a day are 4 x 1 + 4 x 2 = 12
     * ha-days of 0.1 min: 131.2.
     */
    @Test
    void fillsTripsAndDaysAddUp() {
        CompiledSeason season = CompiledSeason.of(fields(new TwoFieldsADay(1)).season(6));
        Plan plan = plantedInOrder(season);

        assertThat(-plan.score().soft()).isEqualTo(131);
        assertThat(effort(season, plan)).isEqualTo(131);
    }

    /** A nurse tank for one load makes it three trips. The rig comes from the yard an hour away, goes there and back twice and there once: 6 x 60 min of driving at 0.5. */
    @Test
    void aRigDrivesToWaterAndBack() {
        CompiledSeason season = CompiledSeason.of(
                fields(new TwoFieldsADay(1).farFromWater(36_000)).season(6));
        Plan plan = plantedInOrder(season);

        assertThat(-plan.score().soft()).isEqualTo(90 + 60 + 1 + 180);
        assertThat(effort(season, plan)).isEqualTo(90 + 60 + 1 + 180);
    }

    /** The fields lie in a row, 300 m from one to the next and from the yard to the first: six ways of a minute at 5 m/s, 3 min at the weight of 0.5. */
    @Test
    void aPlanterDrivesFromFieldToField() {
        Season row = fields(new TwoFieldsADay(1))
                .season(6)
                .change()
                .distances((from, to) -> 300.0 * Math.abs(inRow(from) - inRow(to)))
                .season();
        CompiledSeason season = CompiledSeason.of(row);

        assertThat(new PlantersDriving(season).leastS(0)).isEqualTo(6 * 60);
        assertThat(new PlantersDriving(season).leastS(2e6)).isEqualTo(5 * 60);
        assertThat(new PlantersDriving(season).leastS(1.9e6)).isEqualTo(6 * 60);
    }

    private static int inRow(String place) {
        return place.startsWith("F") ? 1 + Integer.parseInt(place.substring(1)) : 0;
    }

    @Test
    void noPlanOfASmallSeasonHasLess() {
        IntStream.range(0, 60).forEach(seed -> {
            CompiledSeason season = CompiledSeason.of(RandomSeasons.season(seed, MOST_FIELDS));
            Enumeration.best(season, StopSignal.untilTold()).ifPresent(lists -> {
                Plan best = RandomPlans.record(season, lists.orders(season.season()));

                assertThat(effort(season, best))
                        .as("season %d", seed)
                        .isLessThanOrEqualTo(-best.score().soft());
            });
        });
    }

    @Test
    void noFirstPlanOfAnyKindOfSeasonHasLess() {
        KindsOfSeason.all(new Random(7).nextInt(100)).forEach((name, season) -> {
            if (season.fields().size() <= 60) {
                CompiledSeason compiled = CompiledSeason.of(season);
                Plan plan =
                        RandomPlans.record(compiled, FirstLists.best(compiled).orders(season));

                assertThat(effort(compiled, plan))
                        .as(name)
                        .isPositive()
                        .isLessThanOrEqualTo(-plan.score().soft());
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-season", "metric", "spring", "weather-spring", "mixed-farm"})
    void noFirstPlanOfADemoSeasonHasLess(String name) {
        Reading reading = SeasonFiles.read(Path.of("..", "scenarios", name), List.of());
        assertThat(reading).isInstanceOf(Reading.Valid.class);
        Season season = ((Reading.Valid) reading).season();
        CompiledSeason compiled = CompiledSeason.of(season);
        Plan plan = RandomPlans.record(compiled, FirstLists.best(compiled).orders(season));

        assertThat(effort(compiled, plan))
                .isGreaterThan(-plan.score().soft() / 3)
                .isLessThanOrEqualTo(-plan.score().soft());
    }

    private static long effort(CompiledSeason season, Plan plan) {
        return SeasonBounds.of(season).forPlan(plan).effortMin();
    }

    private static TwoFieldsADay fields(TwoFieldsADay season) {
        IntStream.range(0, 6).forEach(i -> season.field(0, 5, 1));
        return season;
    }

    private static Plan plantedInOrder(CompiledSeason season) {
        return RandomPlans.record(
                season,
                List.of(season.season().fields().stream()
                        .map(field -> field.id())
                        .toList()));
    }
}
