package freshfurrow.cli.text;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Standing;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class PlanDayTest {
    private static final Plan PLAN = ExamplePlan.plan();
    private static final List<PlanDay> DAYS = PlanDay.of(PLAN);

    @Test
    void batchesThatWereMadeBeforeThePlanBeginsAreNoWorkOfItsDays() {
        Plan plan = ExamplePlan.from(
                Standing.at(TUESDAY.atTime(7, 5)),
                List.of(ExamplePlan.plan().batches().get(0)));
        assertThat(PlanDay.of(plan).stream()
                        .filter(day -> day.date().equals(TUESDAY))
                        .map(PlanDay::batches))
                .containsExactly(0);
    }

    @Test
    void aDayOnWhichOnlyWaterIsDrawnIsADay() {
        assertThat(DAYS.get(0))
                .isEqualTo(new PlanDay(MONDAY, Map.of(), 0, 0, 0, 1, 0, Optional.empty(), Optional.empty()));
    }

    @Test
    void aDayOfPlantingHasItsFillsBatchesCompostFinishAndMargin() {
        // the last drop at 09:16, the deadline at 12:00
        assertThat(DAYS.get(1))
                .isEqualTo(new PlanDay(
                        TUESDAY,
                        Map.of("N40", 8.0),
                        1,
                        1,
                        16,
                        0,
                        0,
                        Optional.of(at(TUESDAY, "09:16")),
                        Optional.of(Duration.ofMinutes(164))));
    }

    @Test
    void daysComeInOrder() {
        assertThat(DAYS).extracting(PlanDay::date).containsExactly(MONDAY, TUESDAY, WEDNESDAY);
    }

    @Test
    void theDaysTogetherAreTheTotals() {
        assertThat(DAYS.stream().mapToInt(PlanDay::fills).sum())
                .isEqualTo(PLAN.totals().planterFills());
        assertThat(DAYS.stream().mapToInt(PlanDay::batches).sum())
                .isEqualTo(PLAN.totals().batches());
        assertThat(DAYS.stream().mapToInt(PlanDay::waterTrips).sum())
                .isEqualTo(PLAN.totals().waterTrips());
        assertThat(DAYS.stream().mapToDouble(PlanDay::compostKg).sum())
                .isEqualTo(PLAN.totals().compostKg());
    }
}
