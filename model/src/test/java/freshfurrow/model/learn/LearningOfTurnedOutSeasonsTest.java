package freshfurrow.model.learn;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Tries;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.plan.Plan.SeasonSource;
import freshfurrow.model.plan.PlantingOrders;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.TimeSpread;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.PlanRecorder;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Seasons whose times vary as plans take them to vary, and what their logs teach: the times of the season file are the means that were drawn by, so
 * the intervals hold them, and the spread that was drawn by.
 */
class LearningOfTurnedOutSeasonsTest {
    private static final int SEASONS = 20;
    private static final double MOST_SEASONS = 0.8;
    private static final TimeSpread SPREAD = new TimeSpread(0.2, 0.15, 0.15, 0.1, Optional.empty());

    /** In US units, metric with batches at the water point, and with a sprayer that is mounted on a rig. */
    @ParameterizedTest
    @ValueSource(strings = {"spring", "metric", "mixed-farm"})
    void theFiguresThatWereDrawnByAreLearnedInMostSeasons(String name) {
        Season season = Farms.season(name).change().spread(Optional.of(SPREAD)).season();
        CompiledSeason compiled = CompiledSeason.of(season);
        PlantingOrders orders = PlantingOrders.of(Farms.plan(season));
        Map<String, Integer> made = new TreeMap<>();
        Map<String, Integer> held = new TreeMap<>();
        int seasons = Tries.of(SEASONS);
        for (long number = 1; number <= seasons; number++) {
            Plan turnedOut = PlanRecorder.recordAsItTurnsOut(
                    compiled, orders, SeasonSource.of(season, "season.yaml", ""), Optional.empty(), number);
            for (Lesson lesson :
                    Learning.of(season, TurnedOutLog.of(season, turnedOut)).lessons()) {
                lesson.estimate().ifPresent(estimate -> {
                    String figure = lesson.figure() + " " + lesson.of();
                    made.merge(figure, 1, Integer::sum);
                    held.merge(figure, lesson.differs() ? 0 : 1, Integer::sum);
                });
            }
        }

        assertThat(made.keySet())
                .contains("BATCH_TIME R1", "FIELD_CAPACITY P1", "ROAD_SPEED R1", "SPREAD batchTime", "SPREAD planting");
        made.forEach((figure, count) -> assertThat(held.get(figure))
                .as("%s of %d: %s", figure, count, held)
                .isGreaterThanOrEqualTo((int) Math.floor(MOST_SEASONS * count)));
    }
}
