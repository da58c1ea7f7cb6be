package freshfurrow.app.season;

import static freshfurrow.model.quantity.Factors.DM2_PER_HA;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.OneLoad;
import freshfurrow.model.timeline.tables.Leeway;

/** What one load has room for: the planter's tank, the rig's nurse tank and the hold time. */
public final class LoadRoom {
    private final CompiledSeason season;
    private final int planterIndex;
    private final int rigIndex;
    private final int recipeIndex;
    private final Applicator planter;
    private final Rig rig;

    /**
     * Room for loads of a planter, a rig and a recipe.
     *
     * @param planter index of a planter of the season; likewise {@code rig} and {@code recipe}
     */
    public LoadRoom(Season season, int planter, int rig, int recipe) {
        this.season = CompiledSeason.of(season);
        planterIndex = planter;
        rigIndex = rig;
        recipeIndex = recipe;
        this.planter = season.applicators().get(planter);
        this.rig = season.rigs().get(rig);
    }

    /** The largest area that one load serves, ha; 0 where the hold time is over before any is planted. */
    public double largestHa() {
        long fits = 0;
        long most = season.largestLoadDm2(planterIndex, recipeIndex);
        while (fits < most) {
            long middle = most - (most - fits) / 2;
            if (load(hectares(middle)).hasRoom()) {
                fits = middle;
            } else {
                most = middle - 1;
            }
        }
        return hectares(fits);
    }

    /**
     * The load for an area.
     *
     * @param areaHa above 0, ha
     */
    public SingleLoad load(double areaHa) {
        OneLoad load = OneLoad.forArea(season, planterIndex, rigIndex, recipeIndex, areaHa);
        int plantedS = load.drumS() + load.transferS() + load.plantS();
        return new SingleLoad(
                load,
                load.mixL() > planter.tankL() * (1 + Leeway.SHARE),
                load.mixL() > rig.nurseTankL() * (1 + Leeway.SHARE),
                Math.max(0, plantedS - load.useByS()));
    }

    /**
     * The area that so much finished mix serves, ha; 0 when it serves none.
     *
     * @param litres 0 or more, L
     */
    public double areaHaOf(double litres) {
        return OneLoad.areaHaOf(season, recipeIndex, litres);
    }

    static double hectares(long dm2) {
        return dm2 / DM2_PER_HA;
    }
}
