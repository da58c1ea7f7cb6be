package freshfurrow.cli.day;

import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.LoadingText;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class LoadingTest {
    private static final Plan PLAN = ExamplePlan.plan();

    @Test
    void aRigTakesAlongTheCompostOfTheDaysBatchesByLot() {
        Loading tuesday = on(TUESDAY);
        assertThat(tuesday.kgByLot()).isEqualTo(Map.of("windrow", 10.0, "bought", 6.0));
        assertThat(tuesday.onBoardL()).as("drawn the day before").isEqualTo(3_000);
        assertThat(tuesday.draws()).isZero();
    }

    @Test
    void aDayWithoutBatchesNeedsWaterOnly() {
        assertThat(on(MONDAY)).isEqualTo(new Loading(Map.of(), OptionalDouble.empty(), 0, 3_000, 1));
        assertThat(new LoadingText(new Figures(DisplayUnits.METRIC)).items(on(MONDAY)))
                .containsExactly(new LoadingText.Item("Water", "none on board, 3,000 L to draw in 1 draw"));
    }

    @Test
    void compostIsInPoundsAndFullBucketsWithTheRest() {
        // 50 lb in buckets of 20 lb: two and 10 lb
        Loading loading = new Loading(Map.of("windrow", 50 * 0.45359237), OptionalDouble.of(20 * 0.45359237), 0, 0, 0);
        assertThat(new LoadingText(new Figures(DisplayUnits.US)).items(loading))
                .contains(new LoadingText.Item("Compost", "50 lb of windrow (2 buckets + 10 lb)"));
    }

    private static Loading on(LocalDate date) {
        PlannedMachine rig = PlannedMachine.of(PLAN).get(0);
        MachineDay day = MachineDay.byDate(rig).get(date);
        return Loading.of(day == null ? new MachineDay(rig, date, List.of()) : day, new PlanIndex(PLAN));
    }
}
