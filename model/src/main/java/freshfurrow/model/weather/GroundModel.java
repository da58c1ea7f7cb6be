package freshfurrow.model.weather;

import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.GroundRecord;
import freshfurrow.model.season.WetDay;
import freshfurrow.model.weather.record.DailyWeather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * From weather to wet ground: a daily budget of topsoil water for each drainage class. It begins at field capacity, as ground
 * comes out of winter, up to {@value #LEAD_DAYS} days before the season. A day is closed when the topsoil with the day's rain
 * holds more than its limit, or when so much rain falls on the day itself that nobody plants.
 *
 * @param latitudeDeg of the fields, degrees, north positive, -90 to 90
 * @param topsoils one for each drainage class
 * @param residueCover share of the ground under crop residue, 0 to 1
 * @param rainedOffMm rain of a day that closes it whatever the ground, mm, above 0
 */
public record GroundModel(
        double latitudeDeg, Map<Drainage, Topsoil> topsoils, double residueCover, double rainedOffMm) {
    /** The budget begins so many days before the season, where there is weather for them. */
    public static final int LEAD_DAYS = 60;

    /** Cover of no-till ground in spring after a grain crop: common practice, no source. */
    public static final double USUAL_RESIDUE_COVER = 0.7;

    /** A tenth of an inch: common practice, no source. */
    public static final double USUAL_RAINED_OFF_MM = 2.54;

    /** Evaporation of wet bare soil over reference evapotranspiration: FAO-56, chapter 7, equation 72 for usual wind and humidity. */
    private static final double WET_BARE_SOIL = 1.2;

    /** Share of evaporation that a full cover of residue saves: 5 % for each 10 % of cover, FAO-56, chapter 11. */
    private static final double SAVED_BY_FULL_COVER = 0.5;

    public GroundModel {
        topsoils = Collections.unmodifiableMap(new EnumMap<>(topsoils));
        if (topsoils.size() < Drainage.values().length
                || !(Math.abs(latitudeDeg) <= 90 && residueCover >= 0 && residueCover <= 1 && rainedOffMm > 0)) {
            throw new IllegalArgumentException("no such ground");
        }
    }

    /**
     * The ground of one spring.
     *
     * @param origin where the weather is from, as people know it
     * @param weather of the season's days and of those before it
     * @param first the season's first day
     * @param lead number of days of the weather before the season's first
     */
    GroundRecord ground(String origin, DailyWeather weather, LocalDate first, int lead) {
        Map<LocalDate, Double> rain = new LinkedHashMap<>();
        for (int day = lead; day < weather.days(); day++) {
            if (weather.rainMm(day) >= DailyWeather.WET_DAY_MM) {
                rain.put(first.plusDays(day - lead), weather.rainMm(day));
            }
        }
        double[] evaporation = evaporationMm(weather);
        Map<Drainage, List<WetDay>> wet = new EnumMap<>(Drainage.class);
        topsoils.forEach((drainage, topsoil) ->
                wet.put(drainage, wetDays(topsoil, weather, evaporation, topsoil.fieldCapacityMm(), first, lead)));
        return new GroundRecord(origin, rain, wet);
    }

    /** The wet days of a topsoil that holds {@code startMm} at the beginning. */
    List<WetDay> wetDays(
            Topsoil topsoil, DailyWeather weather, double[] evaporation, double startMm, LocalDate first, int lead) {
        List<WetDay> wet = new ArrayList<>();
        double water = startMm;
        for (int day = 0; day < weather.days(); day++) {
            double rain = weather.rainMm(day);
            double wetted = topsoil.wetted(water, rain);
            if (day >= lead && (wetted > topsoil.limitMm() || rain >= rainedOffMm)) {
                wet.add(new WetDay(first.plusDays(day - lead), wetted, topsoil.limitMm(), rain));
            }
            water = topsoil.dried(wetted, evaporation[day]);
        }
        return wet;
    }

    /** What a wet surface gives off each day, mm. */
    double[] evaporationMm(DailyWeather weather) {
        double share = WET_BARE_SOIL * (1 - SAVED_BY_FULL_COVER * residueCover);
        double[] evaporation = new double[weather.days()];
        LocalDate date = weather.first();
        for (int day = 0; day < evaporation.length; day++) {
            double radiation = ExtraterrestrialRadiation.mjPerM2(latitudeDeg, date.getDayOfYear());
            evaporation[day] = share * Hargreaves.referenceMm(weather.tmaxC(day), weather.tminC(day), radiation);
            date = date.plusDays(1);
        }
        return evaporation;
    }
}
