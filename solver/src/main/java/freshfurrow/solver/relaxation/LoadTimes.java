package freshfurrow.solver.relaxation;

import static freshfurrow.model.quantity.Factors.DM2_PER_M2;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.CompiledSeason;

/** What loads take of a planter's time at the least. */
final class LoadTimes {
    private static final double ROUNDING = 1 + 1e-9;

    private final CompiledSeason season;
    private final LargestLoads largest;
    private final double fastestSPerL;

    LoadTimes(CompiledSeason season, LargestLoads largest) {
        this.season = season;
        this.largest = largest;
        fastestSPerL = season.season().rigs().stream()
                .mapToDouble(Rig::transferLPerS)
                .map(rate -> 1 / rate)
                .min()
                .orElse(0);
    }

    /** To stop, connect and disconnect for a load, s. */
    int setupS(int planter) {
        return planter(planter).fillSetupS();
    }

    /** To plant a dm2, s. */
    double plantingS(int planter) {
        return 1 / (planter(planter).fieldCapacityM2PerS() * DM2_PER_M2 * ROUNDING);
    }

    /** To pump over the mix for a dm2, s: nothing where the machine is mounted on its rig. */
    double pumpingS(int planter, int recipe) {
        return planter(planter).on().isPresent() ? 0 : largest.mixLPerDm2(recipe) * fastestSPerL;
    }

    /** To plant a dm2 with extract and to pump over its mix, s. */
    double treatingS(int planter, int recipe) {
        return plantingS(planter) + pumpingS(planter, recipe);
    }

    private Applicator planter(int planter) {
        return season.season().applicators().get(planter);
    }
}
