package freshfurrow.model.timeline;

/** Plants out of loads for real. */
final class Planting {
    private final CompiledSeason season;
    private final State state;
    private final Walk walk;

    Planting(CompiledSeason season, State state, Walk walk) {
        this.season = season;
        this.state = state;
        this.walk = walk;
    }

    /**
     * Plants out of a load that is in the tank from {@code t} on, and returns the area planted.
     *
     * @param plantBy nothing is planted after this, s
     * @param useBy when the hold time is over, s
     */
    long plant(int planter, int t, int recipe, long loadDm2, int plantBy, int useBy) {
        if (state.journal != null || !walk.isOf(t, loadDm2, plantBy)) {
            walk.tell(state.journal);
            walk.begin(planter, state.planters.place(planter), t);
            walk.plant(planter, recipe, loadDm2, plantBy);
            walk.tell(null);
        }
        state.planters.stand(planter, walk.place(), walk.timeS());
        state.planters.next(planter, walk.index(), walk.leftDm2());
        walk.tally().addTo(state.tally);
        long planted = walk.tally().plantedDm2();
        if (planted > 0) {
            state.tally.margin(season.clock.between(walk.timeS(), useBy));
        }
        return planted;
    }

    /** Plants what is in a planter's tank to begin with; what would be too old, or is of no use, is let out. */
    void plantTank(int planter) {
        Beginning tank = season.beginning;
        int recipe = tank.tankRecipe[planter];
        long dm2 = tank.tankDm2[planter];
        int useBy = tank.tankDeadlineS[planter];
        if (state.journal != null) {
            state.journal.carried(planter, recipe, season.recipes.mixMl(dm2, recipe), useBy);
        }
        walk.forget();
        long planted = plant(planter, tank.planterFreeS[planter], recipe, dm2, useBy, useBy);
        if (planted < dm2) {
            long leftMl = season.recipes.mixMl(dm2, recipe) - season.recipes.mixMl(planted, recipe);
            state.tally.add(Tally.DUMPED_ML, leftMl);
            state.tally.add(Tally.DUMPED_MG, season.recipes.compostMg(dm2 - planted, recipe));
        }
    }
}
