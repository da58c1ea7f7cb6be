package freshfurrow.solver.example;

import freshfurrow.model.example.SmallSeasons;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The seasons by which searches are compared: 8 to 1,000 fields, some with ample machines and some with too few, with scarce
 * compost, with a wet spring, with one rig shared by several planters.
 */
public final class BenchmarkSeasons {
    private BenchmarkSeasons() {}

    /**
     * By name, from the smallest to the largest.
     *
     * @param series 0 for those that the search was chosen by; any other for as many of the same kinds and sizes with other fields,
     *     to see what it does with seasons it was not chosen by
     */
    public static Map<String, Season> series(int series) {
        int seed = 100 * series;
        Map<String, Season> seasons = new LinkedHashMap<>();
        seasons.put("small", SmallSeasons.season(seed + 3));
        seasons.put("calm 20", InventedSeason.of(20, 2, 1, 8_000, seed + 1));
        seasons.put("hurried 30", InventedSeason.hurried(30, 1, seed + 2));
        seasons.put("calm 50", InventedSeason.of(50, 4, 2, 12_000, seed + 3));
        seasons.put("shared rig 50", InventedSeason.of(50, 3, 1, 12_000, seed + 4));
        seasons.put("overload 50", InventedSeason.of(50, 1, 1, 12_000, seed + 5));
        seasons.put("scarce compost 100", scarceCompost(InventedSeason.of(100, 4, 2, 18_000, seed + 6)));
        seasons.put("wet 100", wet(InventedSeason.of(100, 3, 2, 18_000, seed + 7)));
        seasons.put("calm 200", InventedSeason.of(200, 9, 5, 25_000, seed + 8));
        seasons.put("overload 200", InventedSeason.of(200, 4, 2, 25_000, seed + 9));
        seasons.put("shared rigs 400", InventedSeason.of(400, 12, 4, 35_000, seed + 10));
        seasons.put("overload 1000", InventedSeason.of(1_000, 36, 14, 50_000, seed + 11));
        return seasons;
    }

    /** Half of the compost comes after four weeks, and in all there is hardly enough. */
    private static Season scarceCompost(Season season) {
        double kg = season.fields().stream()
                .mapToDouble(
                        field -> field.areaHa() * season.recipe(field.recipe()).compostKgPerHa())
                .sum();
        return InventedSeason.withCompost(
                season,
                List.of(
                        new CompostLot("windrow", kg * 0.5, season.first()),
                        new CompostLot("bought", kg * 0.52, season.first().plusDays(28))));
    }

    /** Rain twice a week. */
    private static Season wet(Season season) {
        List<Rain> rain = new ArrayList<>();
        for (int day = 2; day < season.days(); day += 7) {
            rain.add(new Rain(season.first().plusDays(day), 14 * 3600, 8));
            rain.add(new Rain(season.first().plusDays(day + 3L), 6 * 3600, 15));
        }
        return InventedSeason.withRain(season, rain);
    }
}
