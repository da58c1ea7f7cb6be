package freshfurrow.cli.day;

import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.LoadingText;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        assertThat(on(MONDAY)).isEqualTo(new Loading(Map.of(), Optional.empty(), OptionalDouble.empty(), 0, 3_000, 1));
        assertThat(new LoadingText(new Figures(DisplayUnits.METRIC)).items(on(MONDAY), new PlanIndex(PLAN)))
                .containsExactly(new LoadingText.Item("Water", "none on board, 3,000 L to draw in 1 draw"));
    }

    @Test
    void compostIsInPoundsAndFullBucketsWithTheRest() {
        // 50 lb in buckets of 20 lb: two and 10 lb
        Loading loading = new Loading(
                Map.of("windrow", 50 * 0.45359237), Optional.empty(), OptionalDouble.of(20 * 0.45359237), 0, 0, 0);
        assertThat(new LoadingText(new Figures(DisplayUnits.US)).items(loading, new PlanIndex(PLAN)))
                .contains(new LoadingText.Item("Compost", "50 lb of windrow (2 buckets + 10 lb)"));
    }

    @Test
    void compostThatIsFetchedIsToldTripByTrip() {
        assertThat(compost(TUESDAY))
                .isEqualTo(
                        "none on board, load 10 kg of windrow at well about 06:10, then 14 kg of bought at well about 06:20");
    }

    @Test
    void compostThatIsLeftOnBoardIsToldOnTheNextDay() {
        // 14 kg less the 6 kg of Tuesday's batch
        assertThat(compost(WEDNESDAY)).isEqualTo("8 kg of bought on board from the day before");
    }

    @Test
    void theMostCompostOnBoardIsWhatWasLoadedAndNotUsed() {
        CompostHold hold = new PlanIndex(ExamplePlan.fetched()).compostHold("R1");

        assertThat(hold.isUsed()).isTrue();
        assertThat(hold.mostKgOn(TUESDAY)).isEqualTo(24);
        assertThat(hold.mostKgOn(WEDNESDAY)).isEqualTo(8);
        assertThat(new PlanIndex(PLAN).compostHold("R1").isUsed()).isFalse();
    }

    private static String compost(LocalDate date) {
        Plan plan = ExamplePlan.fetched();
        return new LoadingText(new Figures(DisplayUnits.METRIC))
                .items(on(plan, date), new PlanIndex(plan)).stream()
                        .filter(item -> item.what().equals("Compost"))
                        .map(LoadingText.Item::text)
                        .findFirst()
                        .orElseThrow();
    }

    private static Loading on(LocalDate date) {
        return on(PLAN, date);
    }

    private static Loading on(Plan plan, LocalDate date) {
        PlannedMachine rig = PlannedMachine.of(plan).get(0);
        MachineDay day = MachineDay.byDate(rig).get(date);
        return Loading.of(day == null ? new MachineDay(rig, date, List.of()) : day, new PlanIndex(plan));
    }
}
