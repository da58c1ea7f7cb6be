package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.plan.Plan;
import org.junit.jupiter.api.Test;

final class PlanReportTest {
    @Test
    void boundsAndGapsStandBehindTheFiguresThatHaveThem() {
        Plan plan = ExamplePlan.plan().withBounds(new Plan.Bounds(1, 1, 0.5, 4, -1500, false));

        assertThat(PlanReport.lines(ExampleSeason.season(), plan))
                .contains(
                        "Unplanted    2.00 ha (proven minimum 0.50 ha; at most 1.50 ha more could be planted)",
                        "Late         4.00 ha-days (the proven minimum for a plan that plants as much)",
                        "Fills        2 planter fills (1 is the proven minimum for a plan that plants as much, so at most 1 could be saved)",
                        "Water trips  1 (the proven minimum for a plan that plants as much)")
                .noneMatch(line -> line.startsWith("Proven"));
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
