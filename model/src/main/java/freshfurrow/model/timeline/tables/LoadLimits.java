package freshfurrow.model.timeline.tables;

/** How much a planter can plant out of one load at the most, whoever brings it and whenever. */
public final class LoadLimits {
    private final PlanterTable planters;
    /** By planter and recipe: the largest area that the hold time allows, dm2. */
    private final long[][] withinHold;

    LoadLimits(RecipeTable recipes, PlanterTable planters, RigTable rigs, Beginning beginning) {
        this.planters = planters;
        boolean[] made = beginning.hasMadeByRecipe(recipes.count());
        withinHold = new long[planters.count()][recipes.count()];
        for (int p = 0; p < withinHold.length; p++) {
            for (int r = 0; r < made.length; r++) {
                double secondsPerDm2 =
                        1 / planters.capacityDm2PerS(p) + recipes.mlPerDm2(r) * pumpSPerMl(planters, rigs, p);
                withinHold[p][r] = withinHold(planters.fillSetupS(p), holdS(recipes, r, made[r]), secondsPerDm2);
            }
        }
    }

    /** A machine that is mounted on a rig has its mix where it wants it. */
    private static double pumpSPerMl(PlanterTable planters, RigTable rigs, int planter) {
        return planters.isMounted(planter) ? 0 : rigs.fastestTransferSPerMl();
    }

    /** But for the reserve where all mix is still to be made, s: a rig's first mix may be planted up to its use-by. */
    private static int holdS(RecipeTable recipes, int recipe, boolean made) {
        return made ? recipes.holdS(recipe) : recipes.plannedHoldS(recipe);
    }

    /** Rounded up, dm2. */
    private static long withinHold(int fillSetupS, int holdS, double secondsPerDm2) {
        return (long) Math.ceil(Math.max(0, holdS - fillSetupS) / secondsPerDm2);
    }

    /** By tank and hold time, dm2. */
    public long byTank(int planter, int recipe) {
        return Math.min(planters.tankDm2(planter, recipe), withinHold[planter][recipe]);
    }

    /** A smaller load is brought only where it finishes something, dm2: a share of the largest that tank and hold time allow. */
    public long least(int planter, int recipe) {
        return (long) (planters.leastFill(planter) * byTank(planter, recipe));
    }

    /** The same with a tank that lets in its {@link Leeway}, dm2. */
    public long withLeeway(int planter, int recipe) {
        return Math.min(Leeway.most(planters.tankDm2(planter, recipe)), withinHold[planter][recipe]);
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
}
