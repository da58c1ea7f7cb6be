package freshfurrow.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.WetDay;
import freshfurrow.model.weather.generator.InventedClimate;
import freshfurrow.model.weather.generator.WeatherGenerator;
import freshfurrow.model.weather.record.DailyWeather;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SpringsTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);
    private static final LocalDate LAST = LocalDate.of(2027, 6, 5);

    private final SeasonWeather weather = weather(2001, 10);

    @Test
    void theYearsOfTheRecordComeFirstInOrder() {
        Springs springs = Springs.of(weather, FIRST, LAST, 1);

        assertThat(springs.years()).containsExactly(2001, 2002, 2003, 2004, 2005, 2006, 2007, 2008, 2009, 2010);
        assertThat(springs.spring(9).ground())
                .isEqualTo(weather.ground(2010, FIRST, LAST).orElseThrow());
        assertThat(springs.spring(9).generated()).isFalse();
        assertThat(springs.spring(9).origin()).isEqualTo("2010 in station.csv");
        assertThat(springs.spring(10).generated()).isTrue();
        assertThat(springs.spring(10).origin()).isEqualTo("spring 1 generated from station.csv with seed 1");
    }

    @Test
    void aSpringIsTheSameWhateverOthersAreMadeAndOnHoweverManyCores() {
        Springs springs = Springs.of(weather, FIRST, LAST, 1);
        List<Spring> together =
                IntStream.range(0, 200).parallel().mapToObj(springs::spring).toList();

        assertThat(Springs.of(weather, FIRST, LAST, 1).spring(137)).isEqualTo(together.get(137));
        assertThat(Springs.of(weather, FIRST, LAST, 2).spring(137).ground().wet())
                .isNotEqualTo(together.get(137).ground().wet());
        assertThat(together.stream().map(spring -> spring.ground().rainMm()).distinct())
                .hasSize(200);
    }

    @Test
    void allDatesAreTheSeasons() {
        GroundRecord ground = Springs.of(weather, FIRST, LAST, 1).spring(50).ground();

        assertThat(ground.rainMm().keySet()).allMatch(date -> !date.isBefore(FIRST) && !date.isAfter(LAST));
        assertThat(ground.wetDays(Drainage.POOR))
                .isNotEmpty()
                .extracting(WetDay::date)
                .allMatch(date -> !date.isBefore(FIRST) && !date.isAfter(LAST));
    }

    @Test
    void aLeapDayNeitherDropsNorRepeatsWeather() {
        // 20 mm on 29 February 2004 and on 1 March 2003, the eleventh day from 19 February in both years
        LocalDate first = LocalDate.of(2027, 2, 19);
        LocalDate eleventh = LocalDate.of(2027, 3, 1);

        assertThat(rainOn(LocalDate.of(2004, 2, 29))
                        .ground(2004, first, LAST)
                        .orElseThrow()
                        .rainMm())
                .containsOnlyKeys(eleventh);
        assertThat(rainOn(LocalDate.of(2003, 3, 1))
                        .ground(2003, first, LAST)
                        .orElseThrow()
                        .rainMm())
                .containsOnlyKeys(eleventh);
        assertThat(rainOn(LocalDate.of(2003, 2, 28))
                        .ground(2003, LocalDate.of(2028, 2, 29), LocalDate.of(2028, 3, 2))
                        .orElseThrow()
                        .rainMm())
                .containsOnlyKeys(LocalDate.of(2028, 2, 29));
    }

    @Test
    void fourYearsAreTooFewToGenerateMore() {
        Springs springs = Springs.of(weather(2001, 4), FIRST, LAST, 1);

        assertThat(springs.canGenerate()).isFalse();
        assertThat(Springs.of(weather(2001, 5), FIRST, LAST, 1).canGenerate()).isTrue();
        assertThatThrownBy(() -> springs.spring(4)).hasMessageContaining("no spring 4 in a record of 4");
    }

    @Test
    void levelsAreWhatSoManyOfTenSpringsReach() {
        // ten springs with 0 to 9 wet days of 14: 14, 13 … 5 workable ones; eight reach 7, five 10, two 13
        List<Spring> springs = IntStream.range(0, 10)
                .mapToObj(wet -> new Spring(wet, false, wet(wet)))
                .toList();

        assertThat(WorkableDays.of(springs, Drainage.POOR, FIRST, FIRST.plusDays(13), date -> true))
                .isEqualTo(new WorkableDays(FIRST, 14, 7, 10, 13));
        assertThat(WorkableDays.of(springs, Drainage.WELL, FIRST, FIRST.plusDays(13), FIRST::equals))
                .isEqualTo(new WorkableDays(FIRST, 1, 1, 1, 1));
        assertThat(WorkableDays.byWeek(springs, Drainage.POOR, FIRST, FIRST.plusDays(8)))
                .extracting(WorkableDays::days)
                .containsExactly(7, 2);
    }

    private static GroundRecord wet(int days) {
        List<WetDay> wet = FIRST.datesUntil(FIRST.plusDays(days))
                .map(date -> new WetDay(date, 50, 40, 0))
                .toList();
        return new GroundRecord("a test", Map.of(), Map.of(Drainage.POOR, wet));
    }

    private static SeasonWeather weather(int firstYear, int years) {
        LocalDate first = LocalDate.of(firstYear, 1, 1);
        int days = (int) (LocalDate.of(firstYear + years, 1, 1).toEpochDay() - first.toEpochDay());
        return of(new WeatherGenerator(InventedClimate.climate(), 5).weather(0, first, days));
    }

    private static SeasonWeather rainOn(LocalDate date) {
        LocalDate first = LocalDate.of(date.getYear(), 1, 1);
        double[] tmax = new double[365];
        double[] rain = new double[365];
        Arrays.fill(tmax, 20);
        rain[date.getDayOfYear() - 1] = 20;
        return of(new DailyWeather(first, tmax, new double[365], rain));
    }

    private static SeasonWeather of(DailyWeather weather) {
        int days = weather.days();
        WeatherRecord record = new WeatherRecord(
                weather.first(),
                IntStream.range(0, days).mapToDouble(weather::tmaxC).toArray(),
                IntStream.range(0, days).mapToDouble(weather::tminC).toArray(),
                IntStream.range(0, days).mapToDouble(weather::rainMm).toArray());
        return new SeasonWeather("station.csv", "", record, List.of(), GroundModelTest.usual());
    }
}
