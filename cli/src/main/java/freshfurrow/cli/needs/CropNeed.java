package freshfurrow.cli.needs;

import freshfurrow.model.season.Field;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What the fields of a crop ask for.
 *
 * @param opens first date of their earliest window
 * @param closes last date of their latest window
 * @param compostKg area x compost rate
 * @param mixL area x mix rate; all of it is hauled as water
 * @param daysNeeded see {@link PlantingDays#needed}
 * @param daysThere see {@link PlantingDays#there}
 */
public record CropNeed(
        String crop,
        int fields,
        double areaHa,
        LocalDate opens,
        LocalDate closes,
        double compostKg,
        double mixL,
        double daysNeeded,
        int daysThere) {

    /** One for each crop, in the order in which the season's fields name them. */
    public static List<CropNeed> byCrop(Season season) {
        Map<String, List<Field>> byCrop = new LinkedHashMap<>();
        season.fields().forEach(field -> byCrop.computeIfAbsent(field.crop(), crop -> new ArrayList<>())
                .add(field));
        return byCrop.entrySet().stream()
                .map(crop -> of(season, crop.getKey(), crop.getValue()))
                .toList();
    }

    /** All fields of a season taken together. */
    public static CropNeed ofAll(Season season, String name) {
        return of(season, name, season.fields());
    }

    private static CropNeed of(Season season, String name, Collection<Field> fields) {
        return new CropNeed(
                name,
                fields.size(),
                fields.stream().mapToDouble(Field::areaHa).sum(),
                fields.stream()
                        .map(field -> field.window().first())
                        .min(Comparator.naturalOrder())
                        .orElseThrow(),
                fields.stream()
                        .map(field -> field.window().last())
                        .max(Comparator.naturalOrder())
                        .orElseThrow(),
                sum(season, fields, Recipe::compostKgPerHa),
                sum(season, fields, Recipe::mixLPerHa),
                PlantingDays.needed(season, fields),
                PlantingDays.there(season, fields));
    }

    static double sum(Season season, Collection<Field> fields, ToDoubleFunction<Recipe> ratePerHa) {
        return fields.stream()
                .mapToDouble(field -> field.areaHa() * ratePerHa.applyAsDouble(season.recipe(field.recipe())))
                .sum();
    }
}
