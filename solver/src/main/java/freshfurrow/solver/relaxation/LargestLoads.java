package freshfurrow.solver.relaxation;

import freshfurrow.model.season.Rig;
import freshfurrow.model.timeline.CompiledSeason;

/**
 * How much area a load can serve at the most. It fits the planter's tank and its hold time ({@link
 * CompiledSeason#largestLoadDm2}) and, as its water or mix comes on one rig, the nurse tank of a rig; the timeline lets a hair
 * of 2 dm2 in beside either.
 */
public final class LargestLoads {
    private static final double DM2_PER_HA = 1e6;
    private static final int ROUNDING_DM2 = 3;

    private final CompiledSeason season;

    public LargestLoads(CompiledSeason season) {
        this.season = season;
    }

    /** Of one load, dm2, above 0. */
    public double dm2(int planter, int recipe) {
        double nurse = 0;
        for (Rig rig : season.season().rigs()) {
            nurse = Math.max(nurse, rig.nurseTankL() / mixLPerDm2(recipe));
        }
        return Math.min((double) season.largestLoadDm2(planter, recipe), nurse) + ROUNDING_DM2;
    }

    /**
     * The share of a load's mix that is drawn as water: all of it, but for the hair that may come beside a full nurse tank.
     */
    public double drawnShare(Rig rig, int recipe) {
        return Math.max(0, 1 - ROUNDING_DM2 * mixLPerDm2(recipe) / rig.nurseTankL());
    }

    /** The share that is drawn at the least, whichever rig brings the load. */
    public double drawnShare(int recipe) {
        return season.season().rigs().stream()
                .mapToDouble(rig -> drawnShare(rig, recipe))
                .min()
                .orElse(0);
    }

    /** Finished mix, L/dm2. */
    public double mixLPerDm2(int recipe) {
        return season.season().recipes().get(recipe).mixLPerHa() / DM2_PER_HA;
    }

    /** Compost, mg/dm2. */
    public double compostMgPerDm2(int recipe) {
        return season.season().recipes().get(recipe).compostKgPerHa();
    }
}
