package freshfurrow.model.weather.generator;

import freshfurrow.model.weather.generator.TemperatureClimate.Cycles;
import freshfurrow.model.weather.generator.TemperatureClimate.Persistence;
import freshfurrow.model.weather.generator.TemperatureClimate.States;
import java.time.Month;
import java.util.EnumMap;
import java.util.Map;

/** The invented climate of the scenario weather-spring, whose README has these figures: wet springs and hot summers, inland at 41 degrees north. */
public final class InventedClimate {
    private InventedClimate() {}

    public static Climate climate() {
        Map<Month, RainClimate> rain = new EnumMap<>(Month.class);
        rain.put(Month.JANUARY, new RainClimate(0.30, 0.12, 0.75, 5));
        rain.put(Month.FEBRUARY, new RainClimate(0.32, 0.15, 0.75, 5));
        rain.put(Month.MARCH, new RainClimate(0.38, 0.19, 0.75, 8));
        rain.put(Month.APRIL, new RainClimate(0.42, 0.25, 0.75, 10));
        rain.put(Month.MAY, new RainClimate(0.45, 0.30, 0.75, 12));
        rain.put(Month.JUNE, new RainClimate(0.42, 0.29, 0.75, 15));
        rain.put(Month.JULY, new RainClimate(0.36, 0.24, 0.75, 15));
        rain.put(Month.AUGUST, new RainClimate(0.36, 0.23, 0.75, 15));
        rain.put(Month.SEPTEMBER, new RainClimate(0.40, 0.20, 0.75, 14));
        rain.put(Month.OCTOBER, new RainClimate(0.38, 0.17, 0.75, 11));
        rain.put(Month.NOVEMBER, new RainClimate(0.34, 0.15, 0.75, 8));
        rain.put(Month.DECEMBER, new RainClimate(0.32, 0.13, 0.75, 6));
        AnnualCycle spreadOfHighest = new AnnualCycle(5.5, 1.2, 0.3);
        AnnualCycle spreadOfLowest = new AnnualCycle(4.8, 1.2, 0.2);
        return new Climate(
                rain,
                new TemperatureClimate(
                        new States(
                                new Cycles(new AnnualCycle(17.5, -14, -5), spreadOfHighest),
                                new Cycles(new AnnualCycle(13.5, -13, -5), spreadOfHighest)),
                        new States(
                                new Cycles(new AnnualCycle(3.5, -13, -5), spreadOfLowest),
                                new Cycles(new AnnualCycle(5, -12, -5), spreadOfLowest)),
                        new Persistence(0.633, 0.621, 0.445, 0.563, 0.674)));
    }
}
