package freshfurrow.cli.day;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.sheets.CrewSheets;
import freshfurrow.cli.text.DaySheet;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Standing;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class MixOrderTest {
    private static final LocalDateTime NOW = at(TUESDAY, "06:00");

    private static final Standing.OfPlanter LOADED = planter("L0001");
    private static final Standing.OfRig MADE = new Standing.OfRig(
            "N40", NOW, 1_000, Optional.of(new Mix("standard", 8, at(TUESDAY, "10:03"), List.of("B0000"))), true);

    @Test
    void aPlanOfAWholeSeasonHasNoOrders() {
        assertThat(MixOrder.of(ExamplePlan.plan())).isEmpty();
    }

    @Test
    void mixInATankIsAppliedWhereThePlanPlantsWithIt() {
        Plan plan = plan(Map.of("P1", LOADED), Map.of());
        assertThat(MixOrder.of(plan))
                .containsExactly(new MixOrder.Apply("P1", plan.loads().get(0), List.of("N40")));
        assertThat(DaySheet.lines(plan, TUESDAY))
                .containsSequence(
                        "FIRST: MIX THAT IS ALREADY MADE",
                        "-".repeat(78),
                        "P1 has 1,600 L of load L0001 in its tank (use by 12:00): plant N40 with it, the last by about 09:15");
    }

    @Test
    void mixThatNoFieldTakesIsDrainedWithinItsTime() {
        Plan.Load unused = new Plan.Load(
                "L0000", "P1", "R1", "standard", 300, List.of(), 0, 300, at(TUESDAY, "08:14"), at(TUESDAY, "06:00"));
        Plan whole = plan(Map.of("P1", planter("L0000")), Map.of());
        Plan plan = new Plan(
                whole.season(),
                whole.score(),
                whole.totals(),
                whole.planters(),
                whole.rigs(),
                List.of(unused, whole.loads().get(0), whole.loads().get(1)),
                whole.batches(),
                whole.unserved(),
                whole.bounds(),
                whole.limits(),
                whole.start());
        assertThat(MixOrder.of(plan)).containsExactly(new MixOrder.DrainTank("P1", unused));
        assertThat(DaySheet.lines(plan, TUESDAY))
                .contains(
                        "P1 has 300 L of load L0000 in its tank (use by 08:10): drain it where it can do no harm; by this plan no field gets it in time");
    }

    @Test
    void mixOnARigIsTakenToThePlanterOfItsNextTransfer() {
        Plan plan = plan(Map.of(), Map.of("R1", MADE));
        assertThat(MixOrder.of(plan)).singleElement().isInstanceOf(MixOrder.Bring.class);
        assertThat(CrewSheets.html(plan, MachineDay.withOrders(plan)))
                .containsOnlyOnce(
                        "R1 has mix for 8.00 ha on board (use by 10:00): take it to P1 at N40 by about 07:00");
    }

    @Test
    void ordersStandOnTheDaysFromThePlansBeginningToTheirEnd() {
        Plan plan = plan(Map.of("P1", LOADED), Map.of());
        assertThat(MixOrder.on(plan, MONDAY)).isEmpty();
        assertThat(MixOrder.on(plan, TUESDAY)).hasSize(1);
        assertThat(MixOrder.on(plan, WEDNESDAY)).isEmpty();
    }

    @Test
    void aMachineWithAnOrderAndNoWorkHasASheet() {
        // nothing is planned before Tuesday, when R1 begins
        Standing standing = new Standing(at(MONDAY, "05:00"), Map.of("P1", LOADED), Map.of(), Map.of(), Map.of(), 0, 0);
        Plan plan = ExamplePlan.from(standing, List.of());
        assertThat(MachineDay.withOrders(plan).stream().map(day -> day.machine().id() + " " + day.date()))
                .startsWith("R1 2027-04-19", "P1 2027-04-19", "R1 2027-04-20");
        assertThat(CrewSheets.html(plan, MachineDay.withOrders(plan)).split("P1 has 1,600 L of load L0001", -1))
                .as("on Monday's and on Tuesday's sheet")
                .hasSize(1 + 2);
    }

    @Test
    void aRigBeginsWithTheWaterAndTheBatchesThatItHas() {
        // 1,000 L of water and a batch of 150 L, less the transfer of 1,600 L at 7:16 after 3,000 L drawn on Monday
        Plan.Batch before = new Plan.Batch(
                "B0000", "R1", at(TUESDAY, "05:00"), at(TUESDAY, "05:03"), 16, 150, Map.of("windrow", 16.0));
        Plan plan = ExamplePlan.from(
                new Standing(NOW, Map.of(), Map.of("R1", MADE), Map.of(), Map.of(), 0, 0), List.of(before));
        NurseTank tank = NurseTank.of(plan, "R1");
        assertThat(tank.litresAt(at(MONDAY, "12:00"))).isEqualTo(1_150);
        assertThat(tank.litresAt(at(TUESDAY, "08:00"))).isEqualTo(1_000 + 150 + 3_000 - 1_600);
        assertThat(tank.mostLitresOn(TUESDAY)).isEqualTo(1_150 + 3_000);
    }

    private static Plan plan(Map<String, Standing.OfPlanter> planters, Map<String, Standing.OfRig> rigs) {
        return ExamplePlan.from(new Standing(NOW, planters, rigs, Map.of(), Map.of(), 0, 0), List.of());
    }

    private static Standing.OfPlanter planter(String load) {
        Mix mix = new Mix("standard", 8, at(TUESDAY, "12:00"), List.of());
        return new Standing.OfPlanter(
                "N40", NOW, Optional.of(TUESDAY), Optional.of(new Standing.Tank(load, "R1", mix)), Optional.empty());
    }
}
