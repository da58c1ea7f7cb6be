package freshfurrow.model.weather.generator;

import freshfurrow.model.weather.record.DailyWeather;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Makes weather in the form of WGEN (Richardson and Wright, USDA ARS-8, 1984). Each stretch of days has random numbers of its
 * own, so that it is the same whatever others are made, in whatever order and by how many threads.
 */
public final class WeatherGenerator {
    /** The step of the SplitMix64 sequence (Steele, Lea and Flood 2014), which gives each stretch a seed of its own. */
    private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

    private final Climate climate;
    private final Map<Month, SharedStateContinuousSampler> amounts = new EnumMap<>(Month.class);
    private final long seed;

    /** A generator whose every stretch of days follows from the seed and its number. */
    public WeatherGenerator(Climate climate, long seed) {
        this.climate = climate;
        this.seed = seed;
        UniformRandomProvider unused = RandomSource.L64_X128_MIX.create(seed);
        climate.rain()
                .forEach((month, rain) -> amounts.put(
                        month, AhrensDieterMarsagliaTsangGammaSampler.of(unused, rain.shape(), rain.scaleMm())));
    }

    /**
     * Weather of some days.
     *
     * @param stretch number of the stretch
     * @param days 1 or more
     * @throws NullPointerException when the climate does not cover a month of these days
     */
    public DailyWeather weather(long stretch, LocalDate first, int days) {
        UniformRandomProvider random =
                RandomSource.L64_X128_MIX.create(new SplittableRandom(seed + GOLDEN_GAMMA * stretch).nextLong());
        ContinuousSampler normal = ZigguratSampler.NormalizedGaussian.of(random);
        Map<Month, ContinuousSampler> amount = new EnumMap<>(Month.class);
        Residuals residuals = new Residuals(climate.temperatures().residuals());
        double[] tmaxC = new double[days];
        double[] tminC = new double[days];
        double[] rainMm = new double[days];
        LocalDate date = first;
        boolean wet = random.nextDouble() < rain(date).shareOfWetDays();
        residuals.begin(normal);
        for (int day = 0; day < days; day++) {
            if (day > 0) {
                RainClimate rain = rain(date);
                wet = random.nextDouble() < (wet ? rain.wetAfterWet() : rain.wetAfterDry());
                residuals.next(normal);
            }
            rainMm[day] = wet
                    ? amount.computeIfAbsent(date.getMonth(), month -> amount(month, random))
                            .sample()
                    : 0;
            int dayOfYear = date.getDayOfYear();
            TemperatureClimate temperatures = climate.temperatures();
            double highest = temperatures.highest().of(wet).temperature(dayOfYear, residuals.highest());
            double lowest = temperatures.lowest().of(wet).temperature(dayOfYear, residuals.lowest());
            tmaxC[day] = Math.max(highest, lowest);
            tminC[day] = Math.min(highest, lowest);
            date = date.plusDays(1);
        }
        return new DailyWeather(first, tmaxC, tminC, rainMm);
    }

    private RainClimate rain(LocalDate date) {
        return Objects.requireNonNull(climate.rain().get(date.getMonth()));
    }

    private ContinuousSampler amount(Month month, UniformRandomProvider random) {
        return Objects.requireNonNull(amounts.get(month)).withUniformRandomProvider(random);
    }
}
