package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.plan.Bill;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.CostItem;
import freshfurrow.model.season.Costs;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class PlanReportTest {
    @Test
    void boundsAndGapsStandBehindTheFiguresThatHaveThem() {
        Plan plan = ExamplePlan.plan().withBounds(new Plan.Bounds(1, 1, 0.5, 4, -1500, false));

        assertThat(PlanReport.lines(ExampleSeason.season(), plan))
                .contains(
                        "Unplanted    2.00 ha (proven minimum 0.50 ha; at most 1.50 ha more could be planted)",
                        "Late         4.00 ha-days (the proven minimum for a plan that plants as much)",
                        "Fills        2 planter fills (1 is the proven minimum for a plan that plants as much and is no later, so at most 1 could be saved)",
                        "Water trips  1 (the proven minimum for a plan that plants as much)")
                .noneMatch(line -> line.startsWith("Proven"));
    }

    @Test
    void effortStandsBesideWhatIsProvenOfIt() {
        Plan plan = ExamplePlan.plan();
        long effort = -plan.score().soft();

        assertThat(effort).isEqualTo(77);
        assertThat(PlanReport.lines(
                        ExampleSeason.season(), plan.withBounds(new Plan.Bounds(1, 1, 0.5, 4, -1500, 60, false))))
                .contains(
                        "Effort       77 min (60 is the proven minimum for a plan that plants as much and is no later, so at most 17 could be saved)");
        assertThat(PlanReport.lines(
                        ExampleSeason.season(), plan.withBounds(new Plan.Bounds(1, 1, 2, 4, -2000, effort, true))))
                .contains("Effort       77 min (the proven minimum for a plan that plants as much and is no later)");
        assertThat(PlanReport.lines(ExampleSeason.season(), plan.withBounds(new Plan.Bounds(1, 1, 2, 4, -2000, false))))
                .noneMatch(line -> line.startsWith("Effort"));
    }

    /** 50 h x 38, 24 kg x 0.2 and 0.25 a kilogram: each in the units of the season's people, whatever it is kept in. */
    @Test
    void aBillIsToldLineByLineWithItsSum() {
        Costs prices = new Costs(Optional.of("EUR"), 24, 14, 0.5, 0.25, 10, 700, 0, 0.003, 0, Map.of());
        Map<CostItem, Double> amounts = Map.of(
                CostItem.WORK, 50.0,
                CostItem.ROAD, 19.0,
                CostItem.COMPOST, 24.0,
                CostItem.LATE, 4.0,
                CostItem.UNPLANTED, 2.0,
                CostItem.WATER, 2_400.0);
        Plan plan = billed(Bill.of(prices, item -> amounts.getOrDefault(item, 0.0)))
                .withBounds(new Plan.Bounds(1, 1, 2, 4, -1_500_000_000, false));

        assertThat(PlanReport.lines(ExampleSeason.season(), plan))
                .containsSequence(
                        "Bill         3,362.70 EUR (proven minimum 1,500.00 EUR)",
                        "  hours      1,900.00 EUR: 50.0 h of machines at work x 38.00/h",
                        "  roads      9.50 EUR: 19.0 km x 0.50/km",
                        "  compost    6.00 EUR: 24 kg x 0.25/kg",
                        "  late       40.00 EUR: 4.00 ha-days x 10.00/ha/d",
                        "  unplanted  1,400.00 EUR: 2.00 ha x 700.00/ha",
                        "  water      7.20 EUR: 2,400 L x 0.003/L")
                .noneMatch(line -> line.startsWith("Proven"));
    }

    private static Plan billed(Bill bill) {
        Plan plan = ExamplePlan.plan();
        Plan.Totals totals = plan.totals();
        return new Plan(
                plan.season(),
                new Plan.Score(0, Math.round(-1e6 * bill.sum()), -77),
                new Plan.Totals(
                        totals.areaHa(),
                        totals.untreatedHa(),
                        totals.unservedHa(),
                        totals.lateHaDays(),
                        totals.planterFills(),
                        totals.waterTrips(),
                        totals.compostTrips(),
                        totals.batches(),
                        totals.compostKg(),
                        totals.dumpedL(),
                        totals.waitMin(),
                        totals.idleMin(),
                        totals.overtimeMin(),
                        totals.driveKm(),
                        totals.smallestMarginMin(),
                        totals.finish(),
                        Optional.of(bill)),
                plan.planters(),
                plan.rigs(),
                plan.loads(),
                plan.batches(),
                plan.unserved(),
                plan.bounds(),
                plan.limits());
    }

    @Test
    void whatIsProvedOfThePlanAsAWholeIsSaid() {
        Plan least = ExamplePlan.plan().withBounds(new Plan.Bounds(1, 1, 2, 4, -2000, false));
        Plan best = ExamplePlan.plan().withBounds(new Plan.Bounds(1, 1, 2, 4, -2000, true));

        assertThat(PlanReport.lines(ExampleSeason.season(), least))
                .contains(
                        "Proven: no plan for this season can have less late or unplanted area (as weighted by its goals).");
        assertThat(PlanReport.lines(ExampleSeason.season(), best))
                .contains("Proven best: every possible plan was tried and none scores better.");
    }

    @Test
    void aPlanIsReportedByDayThenInSumThenWhatIsLateOrLeftAndWhy() {
        // Of S80's window, Monday and Tuesday, the planter spent 2 h on N40, 18 min driving, 16 min at its fill and 2
        // min waiting.
        // Margins are 164 and 228 min.
        assertThat(String.join("\n", PlanReport.lines(ExampleSeason.season(), ExamplePlan.plan())))
                .isEqualTo("""
                        Plan of season example

                        Day             Fills  Batches  Compost  Water trips  Last planting  Tightest margin  Fields
                        Mon 2027-04-19      0        0     0 kg            1              -                -
                        Tue 2027-04-20      1        1    16 kg            0          09:16       2 h 44 min  N40 8.00 ha
                        Wed 2027-04-21      1        1     8 kg            0          08:20       3 h 48 min  S80 4.00 ha

                        Planted      12.00 ha, finished on Wed 2027-04-21 at 08:20
                        Unplanted    2.00 ha
                        Late         4.00 ha-days
                        Fills        2 planter fills
                        Water trips  1
                        Batches      2, with 24 kg of compost
                        Dumped       0 L of mix
                        Waiting      planters wait 2 min for a rig, water or compost
                        Driving      19.0 km, planters and rigs together
                        Freshness    the tightest load is in the ground 2 h 44 min before its use-by time; a typical load 3 h 48 min before

                        Planted after their window
                          S80: 4.00 ha after Tue 2027-04-20, the last on Wed 2027-04-21 (4.00 ha-days)
                            Why: while its window was open P1 spent 2 h 00 min on other fields, 18 min driving, 16 min on fills, 2 min waiting for a rig

                        Unplanted
                          E20: 2.00 ha
                            Why: no compost left after 2027-04-21: 4 kg short""");
    }
}
