package freshfurrow.solver.estimate;

import static freshfurrow.model.quantity.Factors.MG_PER_KG;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;

/** How far the compost of a season goes, whenever it comes, where what it does not reach is left unplanted. */
final class Compost {
    /** Loads may lack as much, so that compost which is just enough is enough. */
    private static final double LEEWAY = 1.001;

    private final double[] mgPerDm2;
    private final double supplyMg;

    Compost(CompiledSeason compiled) {
        Season season = compiled.season();
        // a kilogram a hectare is a milligram a square decimetre
        double[] byRecipe = season.recipes().stream()
                .mapToDouble(recipe -> recipe.compostKgPerHa())
                .toArray();
        mgPerDm2 = new double[compiled.fieldCount()];
        for (int field = 0; field < mgPerDm2.length; field++) {
            mgPerDm2[field] = byRecipe[compiled.recipeIndex(field)];
        }
        double mg = season.compost().stream().mapToDouble(CompostLot::massKg).sum() * MG_PER_KG;
        for (int planter = 0; planter < compiled.planterCount(); planter++) {
            mg += mixed(compiled.tankDm2(planter), compiled.tankRecipe(planter), byRecipe);
        }
        for (int rig = 0; rig < season.rigs().size(); rig++) {
            mg += compiled.rigCompostMg(rig) + mixed(compiled.rigMixDm2(rig), compiled.rigMixRecipe(rig), byRecipe);
        }
        supplyMg = compiled.mayGoWithout() ? Double.POSITIVE_INFINITY : mg * LEEWAY;
    }

    private static double mixed(long dm2, int recipe, double[] mgPerDm2) {
        return recipe < 0 ? 0 : dm2 * mgPerDm2[recipe];
    }

    double mgPerDm2(int field) {
        return mgPerDm2[field];
    }

    /** Of fields that take so much compost the share of area that gets none, 0 or more and less than 1: as if each lacked the same. */
    double shareLacking(double neededMg) {
        return neededMg > supplyMg ? 1 - supplyMg / neededMg : 0;
    }
}
