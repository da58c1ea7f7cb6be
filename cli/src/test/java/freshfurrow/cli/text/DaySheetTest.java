package freshfurrow.cli.text;

import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExamplePlan;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.quantity.DisplayUnits;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class DaySheetTest {
    private static final Plan PLAN = ExamplePlan.plan();

    @Test
    void aCompostTripIsAStepOfTheRigAndToTickOff() {
        assertThat(DaySheet.lines(ExamplePlan.fetched(), TUESDAY))
                .contains(
                        "[ ] 06:10  LOAD      10 kg of windrow at well",
                        "8.00 ha to plant, 1 fill, 1 batch, 16 kg of compost, 2 compost trips");
    }

    @Test
    void aSheetTellsEveryStepOfEveryMachine() {
        assertThat(String.join("\n", DaySheet.lines(PLAN, TUESDAY))).startsWith("""
                        ==============================================================================
                        DAY SHEET   Tuesday 20 April 2027   example
                        ==============================================================================
                        8.00 ha to plant, 1 fill, 1 batch, 16 kg of compost
                        Times are rounded to 5 minutes. A use-by time is a limit: the last drop is in the ground by then.

                        RIG R1
                        ------------------------------------------------------------------------------
                        Compost:  10 kg of windrow, 6 kg of bought
                        Water:    3,000 L on board from the day before
                        Tools:    scale, buckets, drum strainer, masks, gloves, eye protection
                                   PARKED    at well since Mon 19 Apr
                            06:35  drive     to N40, 5.0 km
                        [ ] 06:45  BATCH     B0001 at N40: 16 kg of compost: 10 kg from windrow, 6 kg from bought in 150 L of water
                                             USE BY 12:00
                        [ ] 07:00  TRANSFER  1,600 L into P1 at N40, load L0001
                                             from batch B0001; USE BY 12:00
                            07:15  clean     drum and strainer
                            07:20  DONE FOR THE DAY. Park at N40; next batch about 07:00 on Wed 21 Apr

                        PLANTER P1   tank 2,000 L
                        ------------------------------------------------------------------------------
                            06:40  drive     to N40, 4.0 km
                        [ ] 07:00  FILL      1,600 L from R1 at N40, load L0001: tank 80 % full
                                             enough for 8.00 ha, empty about 09:15; USE BY 12:00
                            07:15  PLANT     8.00 ha in N40, load L0001
                            09:15  DONE FOR THE DAY. Park at N40; next drive about 06:40 on Wed 21 Apr
                        """);
    }

    @Test
    void aSheetIsInTheUnitsOfThePlan() {
        // 1,600 L = 422.7 gal, 8 ha = 19.8 ac, 4 km = 2.5 mi
        assertThat(String.join("\n", DaySheet.lines(ExamplePlan.plan(DisplayUnits.US), TUESDAY)))
                .contains("423 gal into P1", "19.8 ac in N40", "to N40, 2.5 mi", "[ ]  6:45 am  BATCH", "USE BY noon");
    }

    @Test
    void aLoadThatUsesUpItsReserveIsMarked() {
        assertThat(String.join("\n", DaySheet.lines(ExamplePlan.intoReserve(), TUESDAY)))
                .contains("enough for 8.00 ha, empty about 09:15, LITTLE TIME IN HAND; USE BY 12:00");
    }

    @Test
    void aDrawSaysHowMuchAndWhere() {
        assertThat(DaySheet.lines(PLAN, MONDAY)).contains("[ ] 16:10  DRAW      3,000 L of water at well");
    }

    @Test
    void aDayWithoutPlantingSaysSoBeforeItsOtherWork() {
        assertThat(DaySheet.lines(PLAN, MONDAY)).contains("No planting today; 1 water trip");
    }

    @Test
    void aDayThatOnlyFinishesWhatWasBegunBeforeSaysSo() {
        LocalDate thursday = WEDNESDAY.plusDays(1);
        Plan plan = ExamplePlan.overnight();
        Plan.Load load = plan.loads().get(0);
        Plan.Load overMidnight = new Plan.Load(
                load.id(),
                load.planter(),
                load.rig(),
                load.recipe(),
                load.litres(),
                load.batches(),
                load.appliedL(),
                load.dumpedL(),
                ExamplePlan.at(thursday, "09:00"),
                ExamplePlan.at(thursday, "01:45"));
        Activity plant = new Activity.Plant(
                ExamplePlan.at(WEDNESDAY, "23:00"), ExamplePlan.at(thursday, "01:45"), "N40", load.id(), 5);
        Plan night = new Plan(
                plan.season(),
                plan.score(),
                plan.totals(),
                Map.of("P1", new Plan.PlanterPlan(2_000, List.of("N40"), List.of(), List.of(plant))),
                plan.rigs(),
                List.of(overMidnight, plan.loads().get(1)),
                plan.batches(),
                List.of(),
                plan.bounds(),
                plan.limits());
        assertThat(DaySheet.lines(night, thursday)).contains("No planting begins today.");
    }

    @Test
    void aMachineWithoutWorkIsNamedAllTheSame() {
        assertThat(DaySheet.lines(PLAN, MONDAY))
                .containsSequence("PLANTER P1   tank 2,000 L", "-".repeat(78), "no work today");
    }

    @Test
    void aSheetRefersToLocalCodesFirstAndCautionsForTheWorkThatIsOnIt() {
        assertThat(String.join("\n", DaySheet.lines(PLAN, MONDAY)))
                .contains(Cautions.FIRST, "Drawing at well: keep an open air gap", "On the road: ")
                .doesNotContain("release the pressure");
        assertThat(String.join("\n", DaySheet.lines(PLAN, WEDNESDAY)))
                .contains(Cautions.FIRST, "release the pressure", "Dust and mist", "Compost: ", "Old mix: ")
                .doesNotContain("air gap");
    }

    @Test
    void aDayWithoutWorkSaysSo() {
        assertThat(DaySheet.lines(PLAN, MONDAY.minusDays(1))).endsWith("Nothing is planned on this day.");
    }
}
