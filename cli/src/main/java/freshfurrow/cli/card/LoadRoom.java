package freshfurrow.cli.card;

import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Planter;
import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.Leeway;
import freshfurrow.model.timeline.OneLoad;
import java.util.ArrayList;
import java.util.List;

/** What one load has room for: the planter's tank, the rig's nurse tank and the hold time. */
public final class LoadRoom {
    private static final double DM2_PER_HA = 1e6;

    private static final double TENTH_HAIR = 1e-3;

    private final CompiledSeason season;
    private final CardUnits units;
    private final int planterIndex;
    private final int rigIndex;
    private final int recipeIndex;
    private final Planter planter;
    private final Rig rig;

    public LoadRoom(CompiledSeason season, int planter, int rig, int recipe) {
        this.season = season;
        units = new CardUnits(season.season().units());
        planterIndex = planter;
        rigIndex = rig;
        recipeIndex = recipe;
        this.planter = season.season().planters().get(planter);
        this.rig = season.season().rigs().get(rig);
    }

    /** The largest area that one load serves, ha; 0 where the hold time is over before any is planted. */
    public double largestHa() {
        long fits = 0;
        long most = season.largestLoadDm2(planterIndex, recipeIndex);
        while (fits < most) {
            long middle = most - (most - fits) / 2;
            if (tooMuch(load(middle / DM2_PER_HA)).isEmpty()) {
                fits = middle;
            } else {
                most = middle - 1;
            }
        }
        return fits / DM2_PER_HA;
    }

    /** Why a load for an area above 0, in ha, has no room, and what has, a line a reason; empty when it has. */
    List<String> refusals(double areaHa) {
        List<String> reasons = tooMuch(load(areaHa));
        double largest = reasons.isEmpty() ? areaHa : largestHa();
        return reasons.stream()
                .map(reason -> reason + "; "
                        + (largest > 0
                                ? "make " + Math.round(Math.ceil(areaHa / largest - TENTH_HAIR)) + " loads, each for "
                                        + atMost(largest) + " or less"
                                : "no load is small enough; a longer hold time would help"))
                .toList();
    }

    private List<String> tooMuch(OneLoad load) {
        List<String> reasons = new ArrayList<>();
        if (load.mixL() > planter.tankL() * (1 + Leeway.SHARE)) {
            reasons.add(needs(load) + ", but " + planter.id() + "'s tank holds " + volume(planter.tankL()));
        }
        if (load.mixL() > rig.nurseTankL() * (1 + Leeway.SHARE)) {
            reasons.add(needs(load) + ", but " + rig.id() + "'s nurse tank holds " + volume(rig.nurseTankL()));
        }
        int planted = load.drumS() + load.transferS() + load.plantS();
        if (planted > load.useByS()) {
            reasons.add("Takes too long: the last of a load for " + area(load.areaHa()) + " would be in the ground "
                    + CardUnits.time(planted - load.useByS()) + " after its use-by time");
        }
        return reasons;
    }

    private OneLoad load(double areaHa) {
        return OneLoad.forArea(season, planterIndex, rigIndex, recipeIndex, areaHa);
    }

    private String needs(OneLoad load) {
        return "Does not fit: a load for " + area(load.areaHa()) + " is " + volume(load.mixL()) + " of mix";
    }

    /** In whole tenths, rounded down, so that what is asked for has room. */
    private String atMost(double hectares) {
        double tenths = Math.floor(units.figure(Kind.AREA, hectares) * 10 + TENTH_HAIR);
        return CardUnits.number(tenths / 10) + " " + units.symbol(Kind.AREA);
    }

    private String area(double hectares) {
        return units.show(Kind.AREA, hectares);
    }

    private String volume(double litres) {
        return units.show(Kind.VOLUME, litres);
    }
}
