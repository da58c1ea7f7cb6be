package freshfurrow.model.learn;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.example.Tries;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Season;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From the logs of seasons lived through with known figures, learning finds these figures again. */
class LearningRecoversTest {
    private static final int SEASONS = 20;

    /** Below this, a count has a chance of less than 1 in 1,000 if each is right with a chance of 95 %. */
    private static final double CHANCE = 0.001;

    /** In US units, metric with batches at the water point, and with a sprayer that is mounted on a rig. */
    @ParameterizedTest
    @ValueSource(strings = {"spring", "metric", "mixed-farm"})
    void theIntervalHoldsTheTrueFigureAsOftenAsItSays(String name) {
        Season season = Farms.season(name);
        Plan plan = Farms.plan(season);
        int seasons = Tries.of(SEASONS);
        Map<String, Integer> held = new TreeMap<>();
        Map<String, Integer> made = new TreeMap<>();
        for (long seed = 1; seed <= seasons; seed++) {
            SimulatedLog simulated = new SimulatedLog(season, plan, seed);
            for (Lesson lesson : Learning.of(season, simulated.log()).lessons()) {
                lesson.estimate().ifPresent(estimate -> {
                    double truth = simulated.truth(lesson);
                    boolean holds = estimate.low() <= truth && truth <= estimate.high();
                    String figure = lesson.figure() + " " + lesson.of();
                    made.merge(figure, 1, Integer::sum);
                    held.merge(figure, holds ? 1 : 0, Integer::sum);
                });
            }
        }

        assertThat(made.keySet()).contains("BATCH_TIME R1", "FIELD_CAPACITY P1", "ROAD_SPEED R1", "SPREAD batchTime");
        made.forEach((figure, count) -> assertThat(held.get(figure)).as(figure).isGreaterThanOrEqualTo(leastOf(count)));
        int all = made.values().stream().mapToInt(Integer::intValue).sum();
        assertThat(held.values().stream().mapToInt(Integer::intValue).sum()).isGreaterThanOrEqualTo(leastOf(all));
    }

    /** With figures that are those of the season file, no more differ than one of twenty, as far as chance allows. */
    @ParameterizedTest
    @ValueSource(strings = {"spring", "metric"})
    void whatIsRightSeldomDiffers(String name) {
        Season season = Farms.season(name);
        Plan plan = Farms.plan(season);
        int made = 0;
        int alike = 0;
        for (long seed = 1; seed <= Tries.of(SEASONS); seed++) {
            Lessons lessons = Learning.of(season, SimulatedLog.asTheSeasonFileSays(season, plan, seed));
            for (Lesson lesson : lessons.lessons()) {
                if (lesson.estimate().isPresent() && lesson.figure() != Taught.SPREAD) {
                    made++;
                    alike += lesson.differs() ? 0 : 1;
                }
            }
        }

        assertThat(made).isGreaterThan(Tries.of(SEASONS) * 6);
        assertThat(alike).isGreaterThanOrEqualTo(leastOf(made));
    }

    /** The least count of n that has no chance below {@link #CHANCE}, each right with a chance of 95 %; 0.05^n itself is too small a number. */
    private static int leastOf(int n) {
        double logChance = n * Math.log(0.05);
        double atMost = 0;
        int count = 0;
        while (atMost + Math.exp(logChance) < CHANCE) {
            atMost += Math.exp(logChance);
            count++;
            logChance += Math.log((n - count + 1.0) / count * 0.95 / 0.05);
        }
        return count;
    }

    /** By hand: P(X <= 14 of 20) = 0.00033 and P(X <= 15 of 20) = 0.00257, so that 15 is the least with a chance of 1 in 1,000. */
    @Test
    void aCountOfTwentyMayBeFifteenAndOfThousandsNearlyAll() {
        assertThat(leastOf(20)).isEqualTo(15);
        assertThat(leastOf(2_000)).isBetween(1_860, 1_880);
    }
}
