package freshfurrow.cli.needs;

import static freshfurrow.cli.example.ExampleSeason.MONDAY;
import static freshfurrow.cli.example.ExampleSeason.TUESDAY;
import static freshfurrow.cli.example.ExampleSeason.field;
import static freshfurrow.cli.example.ExampleSeason.planter;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WithDefaults;
import freshfurrow.model.season.WorkHours;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class PlantingDaysTest {
    /**
     * Iowa State University Extension, Ag Decision Maker A3-25 'Fieldwork Days in Iowa', October 2014: 1,600 ac in 8.3 suitable
     * days are 192.8 ac a day, which at 14 hours a day asks for 13.8 ac/h. A planter of 13.8 ac/h: 43.8 ft at 4 mph and 65 %,
     * by C = S W E / 8.25 (ASABE EP496).
     */
    @Test
    void agreesWithThePublishedExampleOfSixteenHundredAcres() {
        double acresPerHa = 1 / 0.40468564224;
        Planter planter = WithDefaults.planter(
                "P1",
                43.8 * 0.3048,
                0.76,
                4 * 1609.344 / 3600,
                0.65,
                2_000,
                7,
                0,
                0,
                "yard",
                new WorkHours(List.of(new DaySpan(6 * 3600, 20 * 3600))));
        Field all = field("all", 1_600 / acresPerHa, "corn", MONDAY, MONDAY.plusDays(30));
        Season season = season(List.of(all), List.of(planter));
        assertThat(PlantingDays.areaHaADay(planter) * acresPerHa).isCloseTo(192.8, within(0.8));
        assertThat(PlantingDays.needed(season, season.fields())).isCloseTo(8.3, within(0.05));
    }

    @Test
    void breaksAreNotWorkingTime() {
        assertThat(PlantingDays.hoursADay(planter("P1"))).isEqualTo(Duration.ofHours(10));
    }

    @Test
    void twoPlantersNeedHalfTheDays() {
        // 144 ha at 72 ha a day each
        Field field = field("N40", 144, "corn", MONDAY, TUESDAY);
        assertThat(PlantingDays.needed(season(List.of(field), List.of(planter("P1"), planter("P2"))), List.of(field)))
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void fieldsThatOnlyOnePlanterMayPlantKeepThatPlanterBusy() {
        // P1 alone: 144 ha / 72 ha a day = 2 days; both: (144 + 36) / 144 = 1.25 days
        List<Field> fields = List.of(
                field("N40", 144, "corn", MONDAY, TUESDAY, Set.of("P1")), field("S80", 36, "corn", MONDAY, TUESDAY));
        assertThat(PlantingDays.needed(season(fields, List.of(planter("P1"), planter("P2"))), fields))
                .isCloseTo(2, within(1e-9));
    }

    @Test
    void daysThereLeaveOutClosedDaysAndDaysOutsideTheSeason() {
        // the season is Monday to Sunday, and Sundays are closed
        Field field = field("N40", 1, "corn", MONDAY.minusDays(10), MONDAY.plusDays(10));
        assertThat(PlantingDays.there(season(List.of(field), List.of(planter("P1"))), List.of(field)))
                .isEqualTo(6);
    }

    @Test
    void aDayBetweenTwoWindowsIsNotThere() {
        List<Field> fields = List.of(
                field("N40", 1, "corn", MONDAY, MONDAY),
                field("S80", 1, "corn", MONDAY.plusDays(2), MONDAY.plusDays(3)));
        assertThat(PlantingDays.there(season(fields, List.of(planter("P1"))), fields))
                .isEqualTo(3);
    }

    private static Season season(List<Field> fields, List<Planter> planters) {
        return ExampleSeason.season(fields, planters, List.of(), OptionalDouble.empty());
    }
}
