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
                        "Not planted  2.00 ha (no plan leaves less than 0.50 ha: gap 1.50 ha)",
                        "Late         4.00 ha-days (no plan that plants as much has less)",
                        "Refills      2 planter fills (no plan that plants as much needs fewer than 1: gap 1), 1 water trip (no plan that plants as much needs fewer)")
                .noneMatch(line -> line.startsWith("Proof"));
    }

    @Test
    void whatIsProvedOfThePlanAsAWholeIsSaid() {
        Plan least = ExamplePlan.plan().withBounds(new Plan.Bounds(1, 1, 2, 4, -2000, false));
        Plan best = ExamplePlan.plan().withBounds(new Plan.Bounds(1, 1, 2, 4, -2000, true));

        assertThat(PlanReport.lines(ExampleSeason.season(), least))
                .contains(
                        "Proof        no plan of this season has less late and unplanted area, as its goals weigh them");
        assertThat(PlanReport.lines(ExampleSeason.season(), best))
                .contains("Proof        proved best: every plan of this season was tried, and none has a better score");
    }

    @Test
    void aPlanIsReportedByDayThenInSumThenWhatIsLateOrLeftAndWhy() {
        // Of S80's window, Monday and Tuesday, the planter spent 2 h on N40, 18 min moving, 16 min at its fill and 2
        // min waiting.
        // Margins are 164 and 228 min.
        assertThat(String.join("\n", PlanReport.lines(ExampleSeason.season(), ExamplePlan.plan())))
                .isEqualTo("""
                        Plan of season example

                        Day             Fills  Batches  Compost  Water trips  Planted by  Least margin  Fields
                        Mon 2027-04-19      0        0     0 kg            1           -             -
                        Tue 2027-04-20      1        1    16 kg            0       09:16    2 h 44 min  N40 8.00 ha
                        Wed 2027-04-21      1        1     8 kg            0       08:20    3 h 48 min  S80 4.00 ha

                        Planted      12.00 ha, finished on Wed 2027-04-21 at 08:20
                        Not planted  2.00 ha
                        Late         4.00 ha-days
                        Refills      2 planter fills, 1 water trip
                        Batches      2, with 24 kg of compost
                        Dumped       0 L of mix
                        Waiting      2 min of planters for a rig, water or compost
                        Driving      19.0 km, planters and rigs together
                        Freshness    loads are in the ground at least 2 h 44 min before their hold time ends, half of them 3 h 48 min or more

                        Planted after their window
                          S80: 4.00 ha after Tue 2027-04-20, the last on Wed 2027-04-21 (4.00 ha-days)
                            why: in its window P1 spent 2 h 00 min planting other fields, 18 min on moves, 16 min on fills, 2 min waiting for a rig

                        Not planted
                          E20: 2.00 ha
                            why: no compost left after 2027-04-21: 4 kg short""");
    }
}
