package freshfurrow.solver.construction;

import static freshfurrow.model.quantity.Factors.MG_PER_KG;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Recipe;
import freshfurrow.model.timeline.CompiledSeason;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which fields may well be planted without extract, to begin a search with. */
final class WhoGoesWithout {
    private WhoGoesWithout() {}

    /** All that may; and those that are left when compost goes to the fields first to which each kilogram of it is worth most. */
    static List<Set<Integer>> choices(CompiledSeason season) {
        Set<Integer> all = IntStream.range(0, season.fieldCount())
                .filter(season::mayGoWithout)
                .boxed()
                .collect(Collectors.toUnmodifiableSet());
        return List.of(all, leftOver(season));
    }

    private static Set<Integer> leftOver(CompiledSeason season) {
        double[] leftMg = {
            season.season().compost().stream().mapToDouble(CompostLot::massKg).sum() * MG_PER_KG
        };
        return IntStream.range(0, season.fieldCount())
                .filter(season::mayGoWithout)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        field -> -season.extractWeightThousandths(field) / mgPerDm2(season, field)))
                .filter(field -> (leftMg[0] -= mgPerDm2(season, field) * season.areaDm2(field)) < 0)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** A kilogram a hectare is a milligram a square decimetre of the timeline. */
    private static double mgPerDm2(CompiledSeason season, int field) {
        Recipe recipe = season.season().recipes().get(season.recipeIndex(field));
        return recipe.compostKgPerHa();
    }
}
