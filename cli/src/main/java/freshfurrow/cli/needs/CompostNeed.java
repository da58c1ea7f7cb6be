package freshfurrow.cli.needs;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Compost needed against stock up to a date.
 *
 * @param until last day that counts
 * @param neededKg for the fields whose windows close by then
 * @param stockKg of the lots that are there by then
 */
public record CompostNeed(LocalDate until, double neededKg, double stockKg) {

    /** The eve of each delivery within the season, and the season's last day with all fields. */
    public static List<CompostNeed> of(Season season) {
        List<CompostNeed> needs = new ArrayList<>();
        season.compost().stream()
                .map(CompostLot::from)
                .filter(date -> date.isAfter(season.first()) && !date.isAfter(season.last()))
                .sorted()
                .distinct()
                .map(delivery -> delivery.minusDays(1))
                .forEach(eve -> needs.add(new CompostNeed(eve, needed(season, eve), stock(season, eve))));
        double all = CropNeed.sum(season, season.fields(), Recipe::compostKgPerHa);
        needs.add(new CompostNeed(season.last(), all, stock(season, season.last())));
        return needs;
    }

    /** What is missing, kg; 0 when there is enough. */
    public double shortKg() {
        return Math.max(0, neededKg - stockKg);
    }

    private static double needed(Season season, LocalDate until) {
        List<Field> closing = season.fields().stream()
                .filter(field -> !field.window().last().isAfter(until))
                .toList();
        return CropNeed.sum(season, closing, Recipe::compostKgPerHa);
    }

    private static double stock(Season season, LocalDate until) {
        return season.compost().stream()
                .filter(lot -> !lot.from().isAfter(until))
                .mapToDouble(CompostLot::massKg)
                .sum();
    }
}
