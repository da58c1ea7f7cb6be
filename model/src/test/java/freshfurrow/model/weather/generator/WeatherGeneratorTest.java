package freshfurrow.model.weather.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.weather.record.DailyWeather;
import freshfurrow.model.weather.record.WeatherRecord;
import java.time.LocalDate;
import java.time.Month;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Against the published equations of Richardson and Wright, WGEN, USDA ARS-8 (1984). */
class WeatherGeneratorTest {
    private static final int YEARS = 10_000;
    private static final LocalDate FIRST_OF_MAY = LocalDate.of(2027, 5, 1);

    private final Climate climate = InventedClimate.climate();
    private final WeatherGenerator generator = new WeatherGenerator(climate, 1);

    @Test
    void tenThousandMaysHaveTheMomentsOfTheirParameters() {
        RainClimate may = climate.rain().get(Month.MAY);
        int wet = 0;
        double sum = 0;
        double squares = 0;
        int afterWet = 0;
        int wetAfterWet = 0;
        for (int year = 0; year < YEARS; year++) {
            DailyWeather weather = generator.weather(year, FIRST_OF_MAY, 31);
            for (int day = 0; day < 31; day++) {
                double mm = weather.rainMm(day);
                if (mm > 0) {
                    wet++;
                    sum += mm;
                    squares += mm * mm;
                }
                if (day > 0 && weather.rainMm(day - 1) > 0) {
                    afterWet++;
                    wetAfterWet += mm > 0 ? 1 : 0;
                }
            }
        }
        double mean = sum / wet;

        // P(W|D) / (1 + P(W|D) - P(W|W)) = 0.30 / 0.85
        assertThat((double) wet / YEARS / 31).isCloseTo(0.30 / 0.85, within(0.004));
        assertThat(may.shareOfWetDays()).isCloseTo(0.30 / 0.85, within(1e-12));
        assertThat((double) wetAfterWet / afterWet).isCloseTo(0.45, within(0.005));
        // alpha x beta = 0.75 x 12 mm = 9 mm, alpha x beta^2 = 108 mm2
        assertThat(mean).isCloseTo(9, Percentage.withPercentage(1.5));
        assertThat(squares / wet - mean * mean).isCloseTo(108, Percentage.withPercentage(4));
        assertThat(may.meanMm()).isEqualTo(9);
        assertThat(may.varianceMm2()).isEqualTo(108);
    }

    @Test
    void tenThousandMaysHaveTheTemperaturesOfTheirCycles() {
        double wetSum = 0;
        int wet = 0;
        double drySum = 0;
        int dry = 0;
        for (int year = 0; year < YEARS; year++) {
            DailyWeather weather = generator.weather(year, FIRST_OF_MAY, 15);
            if (weather.rainMm(14) > 0) {
                wetSum += weather.tmaxC(14);
                wet++;
            } else {
                drySum += weather.tmaxC(14);
                dry++;
            }
        }
        TemperatureClimate.States highest = climate.temperatures().highest();

        // 15 May is day 135
        assertThat(wetSum / wet).isCloseTo(highest.wet().mean().on(135), within(0.3));
        assertThat(drySum / dry).isCloseTo(highest.dry().mean().on(135), within(0.3));
    }

    @Test
    void aFitFindsTheParametersThatMadeARecord() {
        Climate fitted = ClimateFit.of(record(2_000));

        for (Month month : Month.values()) {
            RainClimate made = climate.rain().get(month);
            RainClimate found = fitted.rain().get(month);
            // gamma amounts under 0.25 mm count as dry, which takes about 0.05 from P(W|W) and the like from P(W|D)
            assertThat(found.wetAfterWet()).as("P(W|W), %s", month).isCloseTo(made.wetAfterWet(), within(0.06));
            assertThat(found.wetAfterDry()).as("P(W|D), %s", month).isCloseTo(made.wetAfterDry(), within(0.04));
            assertThat(found.meanMm() * found.shareOfWetDays())
                    .as("rain a day, %s", month)
                    .isCloseTo(made.meanMm() * made.shareOfWetDays(), Percentage.withPercentage(5));
        }
        TemperatureClimate.Persistence made = climate.temperatures().residuals();
        TemperatureClimate.Persistence found = fitted.temperatures().residuals();
        assertThat(found.sameDay()).isCloseTo(made.sameDay(), within(0.03));
        assertThat(found.highestAfterHighest()).isCloseTo(made.highestAfterHighest(), within(0.03));
        assertThat(found.lowestAfterLowest()).isCloseTo(made.lowestAfterLowest(), within(0.03));
        assertThat(fitted.temperatures().highest().dry().mean().on(135))
                .isCloseTo(climate.temperatures().highest().dry().mean().on(135), within(0.4));
        assertThat(fitted.temperatures().highest().dry().deviation().on(135))
                .isCloseTo(climate.temperatures().highest().dry().deviation().on(135), within(0.3));
    }

    @Test
    void aStretchIsTheSameWhateverOthersAreMadeAndByHowManyThreads() {
        double alone =
                new WeatherGenerator(climate, 7).weather(41, FIRST_OF_MAY, 50).rainMm(30);
        WeatherGenerator shared = new WeatherGenerator(climate, 7);
        double[] together = IntStream.range(0, 100)
                .parallel()
                .mapToDouble(
                        stretch -> shared.weather(stretch, FIRST_OF_MAY, 50).rainMm(30))
                .toArray();

        assertThat(together[41]).isEqualTo(alone);
        assertThat(IntStream.range(0, 100)
                        .mapToObj(stretch ->
                                shared.weather(stretch, FIRST_OF_MAY, 50).tmaxC(0))
                        .distinct())
                .hasSize(100);
        assertThat(new WeatherGenerator(climate, 8)
                        .weather(41, FIRST_OF_MAY, 50)
                        .tmaxC(30))
                .isNotEqualTo(shared.weather(41, FIRST_OF_MAY, 50).tmaxC(30));
    }

    private WeatherRecord record(int years) {
        LocalDate first = LocalDate.of(1, 1, 1);
        DailyWeather weather = generator.weather(0, first, 365 * years);
        double[] tmax =
                IntStream.range(0, weather.days()).mapToDouble(weather::tmaxC).toArray();
        double[] tmin =
                IntStream.range(0, weather.days()).mapToDouble(weather::tminC).toArray();
        double[] rain =
                IntStream.range(0, weather.days()).mapToDouble(weather::rainMm).toArray();
        return new WeatherRecord(first, tmax, tmin, rain);
    }
}
