package freshfurrow.app.season;

import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A season without a problem.
 *
 * @param largestLoads by planters, then recipes, in the season's order
 * @param plantingCosts where plans are judged by money
 */
public record CheckedSeason(Season season, List<LargestLoad> largestLoads, Optional<PlantingCosts> plantingCosts) {
    public CheckedSeason {
        largestLoads = List.copyOf(largestLoads);
    }

    /**
     * Reads the season.
     *
     * @throws Refused with every problem, when the season cannot be used
     */
    public static CheckedSeason of(GivenSeason given) {
        return of(given.read().season());
    }

    /** A season that was read. */
    public static CheckedSeason of(Season season) {
        CompiledSeason compiled = CompiledSeason.of(season);
        List<LargestLoad> largest = new ArrayList<>();
        for (int planter = 0; planter < season.applicators().size(); planter++) {
            for (int recipe = 0; recipe < season.recipes().size(); recipe++) {
                if (season.sprayers().isEmpty() || isFor(season, planter, recipe)) {
                    largest.add(new LargestLoad(
                            season.applicators().get(planter),
                            season.recipes().get(recipe),
                            LoadRoom.hectares(compiled.largestLoadDm2(planter, recipe))));
                }
            }
        }
        return new CheckedSeason(season, largest, PlantingCosts.of(compiled));
    }

    /** What is planted is not sprayed: of their recipes only those that a machine ever takes. */
    private static boolean isFor(Season season, int planter, int recipe) {
        return season.fields().stream()
                .anyMatch(field -> field.allows(season.applicators().get(planter))
                        && field.recipe().equals(season.recipes().get(recipe).id()));
    }
}
