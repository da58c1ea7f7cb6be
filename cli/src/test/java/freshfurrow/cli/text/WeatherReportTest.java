package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.example.ExampleSeason;
import freshfurrow.model.quantity.DisplayUnits;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WetDay;
import freshfurrow.model.weather.GroundModel;
import freshfurrow.model.weather.SeasonWeather;
import freshfurrow.model.weather.Spring;
import freshfurrow.model.weather.Topsoil;
import freshfurrow.model.weather.record.Filling;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class WeatherReportTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 4, 19);
    private static final LocalDate LAST_YEAR = LocalDate.of(2026, 4, 19);

    @Test
    void workableDaysAreToldWithTheSpringsThatTheyComeFrom() {
        // two springs: in one all seven days are workable, in the other five, as Monday and Tuesday are too wet; 10 mm
        // of rain in one
        Season season = ExampleSeason.season();
        List<WetDay> wet = List.of(new WetDay(MONDAY, 50, 40, 10), new WetDay(MONDAY.plusDays(1), 45, 40, 0));
        Map<Drainage, List<WetDay>> everywhere = Map.of(Drainage.WELL, wet, Drainage.MODERATE, wet, Drainage.POOR, wet);
        List<Spring> springs = List.of(
                new Spring(0, false, new GroundRecord("2026 in station.csv", Map.of(MONDAY, 10.0), everywhere)),
                new Spring(1, true, new GroundRecord("made", Map.of(), Map.of())));

        List<String> lines =
                WeatherReport.lines(season.inSpring(springs.get(0).ground()), weather(), List.of(2026), springs, 3);

        assertThat(String.join("\n", lines))
                .startsWith("""
                        Weather of example, Mon 2027-04-19 to Sun 2027-04-25
                        Record station.csv, 2026-04-19 to 2026-04-19 (invented)
                        2 springs: the year 2026 and 1 generated from the record with seed 3
                        Plans use the weather of 2026 in station.csv
                        Filled: rain of 2026-04-19, same dates of 2025
                        """)
                .contains("Mon 2027-04-19    5 mm     7        5        7        7  #####++")
                .endsWith("soil for years, and a planter that sinks in may tip over or need pulling out.");
    }

    @Test
    void aClosedDayIsToldWithItsFiguresInTheSeasonsUnits() {
        Figures us = new Figures(DisplayUnits.US);
        Figures metric = new Figures(DisplayUnits.METRIC);

        // 50.8 mm = 2 in, 38.1 mm = 1.5 in
        assertThat(GroundText.why(new WetDay(MONDAY, 50.8, 38.1, 0), Drainage.POOR, us))
                .isEqualTo("poorly drained fields closed: 2.0 in of water in the topsoil (limit for a planter 1.5 in)");
        assertThat(GroundText.why(new WetDay(MONDAY, 30, 38, 8), Drainage.WELL, metric))
                .isEqualTo("well drained fields closed: rained off by 8 mm");
    }

    private static SeasonWeather weather() {
        return new SeasonWeather(
                "station.csv",
                "invented",
                new WeatherRecord(LAST_YEAR, new double[] {20}, new double[] {5}, new double[] {0}),
                List.of(new Filling(LAST_YEAR, LAST_YEAR, true, OptionalInt.of(2025))),
                new GroundModel(
                        41,
                        Map.of(
                                Drainage.WELL, Topsoil.usual(Drainage.WELL),
                                Drainage.MODERATE, Topsoil.usual(Drainage.MODERATE),
                                Drainage.POOR, Topsoil.usual(Drainage.POOR)),
                        0.7,
                        2.54));
    }
}
