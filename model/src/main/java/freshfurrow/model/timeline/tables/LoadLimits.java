package freshfurrow.model.timeline.tables;

/** How much a planter can plant out of one load at the most, whoever brings it and whenever. */
public final class LoadLimits {
    private final RecipeTable recipes;
    /** By recipe: whether a rig has mix of it to begin with, which may be planted up to its use-by. */
    private final boolean[] made;

    private final PlanterTable planters;
    private final RigTable rigs;

    LoadLimits(RecipeTable recipes, PlanterTable planters, RigTable rigs, Beginning beginning) {
        made = beginning.hasMadeByRecipe(recipes.count());
        this.recipes = recipes;
        this.planters = planters;
        this.rigs = rigs;
    }

    /** By tank and hold time, dm2. */
    public long byTank(int planter, int recipe) {
        return Math.min(planters.tankDm2(planter, recipe), withinHold(planter, recipe));
    }

    /** A smaller load is brought only where it finishes something, dm2: a share of the largest that tank and hold time allow. */
    public long least(int planter, int recipe) {
        return (long) (planters.leastFill(planter) * byTank(planter, recipe));
    }

    /** The same with a tank that lets in its {@link Leeway}, dm2. */
    public long withLeeway(int planter, int recipe) {
        return Math.min(Leeway.most(planters.tankDm2(planter, recipe)), withinHold(planter, recipe));
    }

    /**
     * Area of one load out of a mix of that area, dm2: all that a tank lets in, else a tank, and so much more that the loads to come
     * can be used up to the last of the mix.
     */
    public long loadOf(int planter, int recipe, long mixDm2) {
        long tank = planters.tankDm2(planter, recipe);
        long most = Leeway.most(tank);
        if (mixDm2 <= most) {
            return mixDm2;
        }
        long loadsToCome = (mixDm2 - 1) / most;
        return Math.max(tank, mixDm2 - loadsToCome * most);
    }

    /** The largest area that the planter can plant in a recipe's hold time, but for its reserve where all mix is still to be made, dm2, rounded up. */
    private long withinHold(int planter, int recipe) {
        double secondsPerDm2 =
                1 / planters.capacityDm2PerS(planter) + recipes.mlPerDm2(recipe) * rigs.fastestTransferSPerMl();
        int holdS = made[recipe] ? recipes.holdS(recipe) : recipes.plannedHoldS(recipe);
        double withinHold = Math.max(0, holdS - planters.fillSetupS(planter)) / secondsPerDm2;
        return (long) Math.ceil(withinHold);
    }
}
