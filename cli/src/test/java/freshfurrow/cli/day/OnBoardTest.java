package freshfurrow.cli.day;

import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.cli.text.DaySheet;
import freshfurrow.model.plan.Plan;
import org.junit.jupiter.api.Test;

final class OnBoardTest {
    /** A load of 1,000 L for 5 ha: 2 ha are planted on Tuesday evening, 3 ha on Wednesday morning. */
    private static final Plan OVERNIGHT = ExamplePlan.overnight();

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
}
