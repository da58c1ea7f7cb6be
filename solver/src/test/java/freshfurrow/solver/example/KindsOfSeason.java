package freshfurrow.solver.example;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Invented seasons of the kinds that are hard in different ways, by name, the same for the same seed. */
public final class KindsOfSeason {
    private static final double EXTENT_OF_A_FIELD_M = 1_700;

    private KindsOfSeason() {}

    /** One of each kind, in 8 to 1,000 fields. */
    public static Map<String, Season> all(long seed) {
        Map<String, Season> seasons = new LinkedHashMap<>();
        seasons.put("tight 8", InventedSeason.hurried(8, 2, seed));
        seasons.put("tight 30", InventedSeason.hurried(30, 2, seed));
        seasons.put("tight 60", InventedSeason.of(60, 1, 1, extentM(60), seed));
        seasons.put("tight 200", InventedSeason.of(200, 4, 2, extentM(200), seed));
        seasons.put("calm 20", InventedSeason.of(20, 2, 1, extentM(20), seed));
        seasons.put("calm 50", InventedSeason.of(50, 4, 2, extentM(50), seed));
        seasons.put("calm 200", InventedSeason.of(200, 9, 5, extentM(200), seed));
        seasons.put("left out 30", withCompostFor(0.8, InventedSeason.of(30, 2, 1, extentM(30), seed)));
        seasons.put("left out 100", withCompostFor(0.8, InventedSeason.of(100, 4, 2, extentM(100), seed)));
        seasons.put("untreated 30", untreated(InventedSeason.of(30, 2, 1, extentM(30), seed)));
        seasons.put("untreated 100", untreated(InventedSeason.of(100, 4, 2, extentM(100), seed)));
        seasons.put("two recipes 120", InventedSeason.of(120, 6, 3, extentM(120), seed));
        seasons.put("shared 60", InventedSeason.cropWindows(60, 4, 1, extentM(60), seed));
        seasons.put("shared 120", InventedSeason.cropWindows(120, 6, 2, extentM(120), seed));
        seasons.put("shared 400", InventedSeason.cropWindows(400, 20, 5, extentM(400), seed));
        seasons.put("shared 1000", InventedSeason.cropWindows(1_000, 25, 5, extentM(1_000), seed));
        seasons.put("tight 1000", InventedSeason.of(1_000, 36, 14, extentM(1_000), seed));
        return seasons;
    }

    private static double extentM(int fields) {
        return EXTENT_OF_A_FIELD_M * Math.sqrt(fields);
    }

    private static Season untreated(Season season) {
        Season scarce = withCompostFor(0.7, season);
        return scarce.change()
                .goals(scarce.goals().withUntreatedDays(OptionalDouble.of(3)))
                .season();
    }

    /** The season with compost for a share of its fields, all of it from the first day on. */
    public static Season withCompostFor(double share, Season season) {
        double kg = season.fields().stream()
                .mapToDouble(
                        field -> field.areaHa() * season.recipe(field.recipe()).compostKgPerHa())
                .sum();
        return InventedSeason.withCompost(season, List.of(new CompostLot("windrow", share * kg, season.first())));
    }
}
