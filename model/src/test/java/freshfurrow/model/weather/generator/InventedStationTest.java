package freshfurrow.model.weather.generator;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.weather.record.DailyWeather;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The weather of the scenario weather-spring is invented, and made just as its README says. */
class InventedStationTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "weather-spring");

    @Test
    void theStationsRecordIsWhatTheGeneratorMakesOfTheClimate() throws IOException {
        assertThat(Files.readString(SCENARIO.resolve("station.csv"))).isEqualTo(text());
    }

    @Test
    void theReadmeHasTheClimatesRain() throws IOException {
        String readme = Files.readString(SCENARIO.resolve("README.md"));

        InventedClimate.climate().rain().forEach((month, rain) -> assertThat(readme)
                .contains(String.format(
                        Locale.ROOT,
                        "| %s | %.2f | %.2f | %.2f | %.0f |",
                        month.getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                        rain.wetAfterWet(),
                        rain.wetAfterDry(),
                        rain.shape(),
                        rain.scaleMm())));
    }

    /** Thirty years of the generator with seed 27, in whole degrees and hundredths of an inch, lines ended as RFC 4180 ends them. */
    static String text() {
        LocalDate first = LocalDate.of(1997, 1, 1);
        int days = (int) (LocalDate.of(2027, 1, 1).toEpochDay() - first.toEpochDay());
        DailyWeather weather = new WeatherGenerator(InventedClimate.climate(), 27).weather(0, first, days);
        StringBuilder text = new StringBuilder("date,tmax (F),tmin (F),rain (in)\r\n");
        for (int day = 0; day < days; day++) {
            text.append(String.format(
                    Locale.ROOT,
                    "%s,%d,%d,%.2f\r\n",
                    weather.date(day),
                    Math.round(weather.tmaxC(day) * 9 / 5 + 32),
                    Math.round(weather.tminC(day) * 9 / 5 + 32),
                    weather.rainMm(day) / 25.4));
        }
        return text.toString();
    }
}
