package freshfurrow.model.timeline;

/**
 * A number of planter fills that no plan can go below if it plants every field.
 *
 * <p>Proof: every load is of one recipe and planted from by one planter. It is at most that planter's tank and the {@link
 * Leeway} that it is let in with. Its last drop is in the ground before its oldest batch's hold time is over;
 * that batch was extracted when the transfer began at the latest, so of the hold time the planter loses at least its fill setup
 * and the pumping at the fastest rig's rate, and plants at its field capacity at best in what is left: area x (1 / capacity +
 * mix rate / transfer rate) is at most hold time - setup. So a recipe's whole volume takes at least its ratio to the largest
 * such load, rounded up, and loads of different recipes are different. What planters have in their tanks to begin with takes no
 * fill.
 */
final class RefillBound {
    private RefillBound() {}

    static int of(CompiledSeason season) {
        int recipes = season.recipes.count();
        long[] area = new long[recipes];
        for (int field = 0; field < season.fieldCount(); field++) {
            area[season.fields.recipe(field)] += season.areaDm2(field);
        }
        for (int p = 0; p < season.planterCount(); p++) {
            area[season.tankRecipe(p)] -= season.tankDm2(p);
        }
        int bound = 0;
        for (int recipe = 0; recipe < recipes; recipe++) {
            long largest = largestLoad(season, recipe);
            if (area[recipe] > 0 && largest > 0) {
                bound += (int) ((area[recipe] + largest - 1) / largest);
            }
        }
        return bound;
    }

    /** The largest area that any planter can plant out of one load of the recipe, dm2, rounded up. */
    private static long largestLoad(CompiledSeason season, int recipe) {
        long largest = 0;
        for (int p = 0; p < season.planterCount(); p++) {
            largest = Math.max(largest, season.mostOfALoadDm2(p, recipe));
        }
        return largest;
    }
}
