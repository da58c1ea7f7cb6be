package freshfurrow.model.timeline.tables;

import freshfurrow.model.season.Recipe;
import freshfurrow.model.season.Season;
import java.util.List;

/** Recipes: what an area takes of mix and compost, and how long a mix keeps. By index in the season's order. */
public final class RecipeTable {
    private final double[] mlPerDm2;
    private final double[] mgPerDm2;
    private final int[] holdS;
    private final int[] reserveS;
    private final List<String> ids;

    RecipeTable(Season season) {
        List<Recipe> recipes = season.recipes();
        mlPerDm2 = recipes.stream()
                .mapToDouble(recipe -> recipe.mixLPerHa() * Scale.ML_PER_L / Scale.DM2_PER_HA)
                .toArray();
        mgPerDm2 = recipes.stream()
                .mapToDouble(recipe -> recipe.compostKgPerHa() * Scale.MG_PER_KG / Scale.DM2_PER_HA)
                .toArray();
        holdS = recipes.stream().mapToInt(Recipe::holdS).toArray();
        reserveS = recipes.stream().mapToInt(Recipe::reserveS).toArray();
        ids = recipes.stream().map(Recipe::id).toList();
    }

    public int count() {
        return holdS.length;
    }

    int indexOf(String id) {
        return ids.indexOf(id);
    }

    /** From the end of a batch until it is too old, s. */
    public int holdS(int recipe) {
        return holdS[recipe];
    }

    /** From the end of a batch until the last drop is to be in the ground of a load that is planned, s. */
    public int plannedHoldS(int recipe) {
        return holdS[recipe] - reserveS[recipe];
    }

    double mlPerDm2(int recipe) {
        return mlPerDm2[recipe];
    }

    /** Finished mix for an area, mL, rounded up. */
    public long mixMl(long dm2, int recipe) {
        return (long) Math.ceil(dm2 * mlPerDm2[recipe]);
    }

    /** Compost for an area, mg, rounded up. */
    public long compostMg(long dm2, int recipe) {
        return (long) Math.ceil(dm2 * mgPerDm2[recipe]);
    }

    /** The largest area that a volume of mix serves, dm2. */
    public long areaOfMix(long ml, int recipe) {
        return largestWithin(ml, mlPerDm2[recipe]);
    }

    /** The largest area that a mass of compost serves, dm2. */
    public long areaOfCompost(long mg, int recipe) {
        return largestWithin(mg, mgPerDm2[recipe]);
    }

    private static long largestWithin(long amount, double perDm2) {
        if (amount >= Long.MAX_VALUE / 2) {
            return Long.MAX_VALUE / 2;
        }
        long dm2 = (long) Math.floor(amount / perDm2);
        while (dm2 > 0 && Math.ceil(dm2 * perDm2) > amount) {
            dm2--;
        }
        return dm2;
    }
}
