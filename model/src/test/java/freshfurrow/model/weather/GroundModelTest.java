package freshfurrow.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.WetDay;
import freshfurrow.model.weather.generator.InventedClimate;
import freshfurrow.model.weather.generator.WeatherGenerator;
import freshfurrow.model.weather.record.DailyWeather;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class GroundModelTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 19);

    private final GroundModel model = usual();

    static GroundModel usual() {
        Map<Drainage, Topsoil> topsoils = new EnumMap<>(Drainage.class);
        for (Drainage drainage : Drainage.values()) {
            topsoils.put(drainage, Topsoil.usual(drainage));
        }
        return new GroundModel(41.2, topsoils, GroundModel.USUAL_RESIDUE_COVER, GroundModel.USUAL_RAINED_OFF_MM);
    }

    @Test
    void groundAtFieldCapacityIsTooWetUntilTheSunHasDriedIt() {
        // 19 April at 41.2 degrees: Ra 35.9 MJ; 20 and 6 °C: 0.0023 x 30.8 x sqrt(14) x 0.408 x 35.9 = 3.9 mm; x 1.2 x
        // 0.75 = 3.5 mm.
        // Moderate: 43.5 mm at the start, limit 39.2 mm; 40.0 mm on the second day, 36.5 on the third.
        GroundRecord ground = model.ground("a test", weather(5, 20, 6), FIRST, 0);

        List<WetDay> wet = ground.wetDays(Drainage.MODERATE);
        assertThat(wet).extracting(WetDay::date).containsExactly(FIRST, FIRST.plusDays(1));
        assertThat(wet.get(0).topsoilMm()).isCloseTo(43.5, within(1e-9));
        assertThat(wet.get(1).topsoilMm()).isCloseTo(40.5, within(0.1));
        assertThat(wet.get(1).limitMm()).isCloseTo(0.9 * 43.5, within(1e-9));
        assertThat(wet).allMatch(WetDay::tooWet);
        assertThat(ground.rainMm()).isEmpty();
    }

    @Test
    void rainOnDryGroundClosesTheDayOnWhichItFallsAndNoOther() {
        GroundRecord ground = model.ground("a test", weather(30, 25, 10, 0, 0, 0, 0, 0, 0, 0, 0, 3), FIRST, 5);

        assertThat(ground.wetDays(Drainage.MODERATE))
                .containsExactly(new WetDay(
                        FIRST.plusDays(3),
                        ground.wetDays(Drainage.MODERATE).get(0).topsoilMm(),
                        0.9 * 43.5,
                        3));
        assertThat(ground.wetDays(Drainage.MODERATE).get(0).tooWet()).isFalse();
        assertThat(ground.rainMm()).containsExactly(Map.entry(FIRST.plusDays(3), 3.0));
    }

    @Property(tries = 200)
    void moreRainNeverGivesMoreWorkableDays(
            @ForAll Drainage drainage,
            @ForAll @LongRange(min = 0, max = 100_000) long spring,
            @ForAll @IntRange(min = 0, max = 99) int day,
            @ForAll @DoubleRange(min = 0, max = 80) double more) {
        DailyWeather dry = made(spring);
        double[] rain = rain(dry);
        rain[day] += more;

        assertThat(closed(drainage, with(dry, rain), 1)).containsAll(closed(drainage, dry, 1));
    }

    @Property(tries = 200)
    void aDrierStartNeverGivesFewerWorkableDays(
            @ForAll Drainage drainage,
            @ForAll @LongRange(min = 0, max = 100_000) long spring,
            @ForAll @DoubleRange(min = 0, max = 1) double startShare) {
        DailyWeather weather = made(spring);

        assertThat(closed(drainage, weather, 1)).containsAll(closed(drainage, weather, startShare));
    }

    @Property(tries = 100)
    void betterDrainedFieldsHaveAsManyWorkableDaysWithinAFew(@ForAll @LongRange(min = 0, max = 100_000) long spring) {
        // not true day by day, as sandy ground holds less water; true of a spring within a few days
        DailyWeather weather = made(spring);

        int well = closed(Drainage.WELL, weather, 1).size();
        assertThat(closed(Drainage.MODERATE, weather, 1).size()).isGreaterThanOrEqualTo(well - 3);
        assertThat(closed(Drainage.POOR, weather, 1).size()).isGreaterThanOrEqualTo(well - 3);
    }

    private List<LocalDate> closed(Drainage drainage, DailyWeather weather, double startShare) {
        Topsoil soil = model.topsoils().get(drainage);
        return model
                .wetDays(soil, weather, model.evaporationMm(weather), startShare * soil.fieldCapacityMm(), FIRST, 0)
                .stream()
                .map(WetDay::date)
                .toList();
    }

    private static DailyWeather made(long spring) {
        return new WeatherGenerator(InventedClimate.climate(), 1).weather(spring, FIRST, 100);
    }

    private static double[] rain(DailyWeather weather) {
        double[] rain = new double[weather.days()];
        Arrays.setAll(rain, weather::rainMm);
        return rain;
    }

    private static DailyWeather with(DailyWeather weather, double[] rain) {
        double[] tmax = new double[rain.length];
        double[] tmin = new double[rain.length];
        Arrays.setAll(tmax, weather::tmaxC);
        Arrays.setAll(tmin, weather::tminC);
        return new DailyWeather(weather.first(), tmax, tmin, rain);
    }

    /** The same temperatures every day, and the rain that is said, from the first day on. */
    private static DailyWeather weather(int days, double tmaxC, double tminC, double... rainMm) {
        double[] tmax = new double[days];
        double[] tmin = new double[days];
        Arrays.fill(tmax, tmaxC);
        Arrays.fill(tmin, tminC);
        return new DailyWeather(FIRST, tmax, tmin, Arrays.copyOf(rainMm, days));
    }
}
