package freshfurrow.solver.why;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Distances;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import java.util.List;
import java.util.Set;

/** What a season is planted with: all of it that there could be more of. */
public record Means(
        List<Recipe> recipes,
        List<Planter> planters,
        List<Rig> rigs,
        List<WaterPoint> waterPoints,
        List<CompostLot> compost) {

    static Means of(Season season) {
        return new Means(season.recipes(), season.planters(), season.rigs(), season.waterPoints(), season.compost());
    }

    Means withRecipes(List<Recipe> others) {
        return new Means(others, planters, rigs, waterPoints, compost);
    }

    Means withPlanters(List<Planter> others) {
        return new Means(recipes, others, rigs, waterPoints, compost);
    }

    Means withRigs(List<Rig> others) {
        return new Means(recipes, planters, others, waterPoints, compost);
    }

    Means withWaterPoints(List<WaterPoint> others) {
        return new Means(recipes, planters, rigs, others, compost);
    }

    Means withCompost(List<CompostLot> others) {
        return new Means(recipes, planters, rigs, waterPoints, others);
    }

    /**
     * The season with these means.
     *
     * @param fields ids of the fields that stay
     * @param roads distances to take instead of the season's own, the same but sooner had
     */
    Season in(Season season, Set<String> fields, Distances roads) {
        return new Season(
                season.name(),
                season.first(),
                season.last(),
                season.timezone(),
                season.closed(),
                season.places(),
                recipes,
                season.fields().stream()
                        .filter(field -> fields.contains(field.id()))
                        .toList(),
                planters,
                rigs,
                waterPoints,
                compost,
                season.drying(),
                season.rain(),
                roads,
                season.goals(),
                season.units());
    }
}
