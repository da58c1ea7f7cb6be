package freshfurrow.solver.lived;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.read.Reading;
import freshfurrow.model.read.SeasonFiles;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Season;
import freshfurrow.model.weather.GroundModel;
import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.record.WeatherRecord;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Rain as springs are lived through it: a record's days, the budget of the ground, hours for the beginning of wet times. */
class MoreRainTest {
    private static final Reading.Valid READ =
            (Reading.Valid) SeasonFiles.read(Path.of("../scenarios/weather-spring"), List.of());
    private static final Season SEASON = READ.season();
    private static final SeasonWeather WEATHER = READ.weather().orElseThrow();
    private static final List<Integer> YEARS = WEATHER.years(SEASON.first(), SEASON.last());

    /** Rain before the season counts as well, as the budget begins before it. */
    @Property(tries = 300)
    void moreRainOnADayNeverGivesAnHourMoreInWhichGroundIsFit(
            @ForAll @IntRange(min = 0, max = 29) int spring,
            @ForAll @IntRange(min = -GroundModel.LEAD_DAYS, max = 59) int day,
            @ForAll @DoubleRange(min = 0, max = 80) double moreMm) {
        int year = YEARS.get(spring % YEARS.size());
        LocalDate date = SEASON.first().withYear(year).plusDays(day % SEASON.days());

        GroundDays before = lived(WEATHER, year, spring);
        GroundDays after = lived(withRain(date, moreMm), year, spring);

        for (Drainage drainage : Drainage.values()) {
            for (int d = 0; d < SEASON.days(); d++) {
                assertThat(after.wetFromS(drainage, d))
                        .as("%s ground, day %d of %d, %.1f mm more on %s", drainage, d, year, moreMm, date)
                        .isLessThanOrEqualTo(before.wetFromS(drainage, d));
            }
        }
    }

    private static GroundDays lived(SeasonWeather weather, int year, int spring) {
        return new GroundDays(
                SEASON,
                new RainHours(1)
                        .in(
                                weather.ground(year, SEASON.first(), SEASON.last())
                                        .orElseThrow(),
                                spring + 1,
                                SEASON.first()));
    }

    private static SeasonWeather withRain(LocalDate date, double moreMm) {
        WeatherRecord record = WEATHER.record();
        double[] tmaxC = new double[record.days()];
        double[] tminC = new double[record.days()];
        double[] rainMm = new double[record.days()];
        Arrays.setAll(tmaxC, record::tmaxC);
        Arrays.setAll(tminC, record::tminC);
        Arrays.setAll(rainMm, record::rainMm);
        rainMm[(int) ChronoUnit.DAYS.between(record.first(), date)] += moreMm;
        return new SeasonWeather(
                WEATHER.file(),
                WEATHER.about(),
                new WeatherRecord(record.first(), tmaxC, tminC, rainMm),
                WEATHER.fillings(),
                WEATHER.model());
    }
}
