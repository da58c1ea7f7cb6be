package freshfurrow.cli.day;

import static freshfurrow.cli.example.ExamplePlan.at;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.text.DaySheet;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class OnBoardTest {
    /** A load of 1,000 L for 5 ha: 2 ha are planted on Tuesday evening, 3 ha on Wednesday morning. */
    private static final Plan OVERNIGHT = overnight();

    @Test
    void whatIsNotPlantedByNightIsOnBoardInTheMorning() {
        // 1,000 L x 3 ha / 5 ha
        assertThat(OnBoard.at(OVERNIGHT, "P1", WEDNESDAY.atStartOfDay()))
                .contains(new OnBoard(OVERNIGHT.loads().get(0), 600, 3));
    }

    @Test
    void theSheetOfTheMorningSaysIt() {
        assertThat(DaySheet.lines(OVERNIGHT, WEDNESDAY))
                .contains("In the tank from the day before: 600 L of L0001 for 3.00 ha, use by 09:00");
    }

    @Test
    void aLoadThatIsStillToComeIsNotOnBoard() {
        assertThat(OnBoard.at(OVERNIGHT, "P1", TUESDAY.atStartOfDay())).isEmpty();
    }

    @Test
    void aTankThatIsEmptyHasNothingOnBoard() {
        assertThat(OnBoard.at(OVERNIGHT, "P1", WEDNESDAY.plusDays(1).atStartOfDay()))
                .isEmpty();
    }

    private static Plan overnight() {
        Plan plan = ExamplePlan.plan();
        Plan.Load load = new Plan.Load(
                "L0001",
                "P1",
                "R1",
                "standard",
                1_000,
                List.of("B0001"),
                1_000,
                0,
                at(WEDNESDAY, "09:00"),
                at(WEDNESDAY, "06:45"));
        List<Activity> activities = List.of(
                new Activity.Fill(at(TUESDAY, "16:20"), at(TUESDAY, "16:30"), "N40", "L0001"),
                new Activity.Plant(at(TUESDAY, "16:30"), at(TUESDAY, "17:00"), "N40", "L0001", 2),
                new Activity.Plant(at(WEDNESDAY, "06:00"), at(WEDNESDAY, "06:45"), "N40", "L0001", 3));
        return new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                Map.of("P1", new Plan.PlanterPlan(2_000, List.of("N40"), activities)),
                plan.rigs(),
                List.of(load, plan.loads().get(1)),
                plan.batches(),
                List.of());
    }
}
